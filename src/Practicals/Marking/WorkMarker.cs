using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Judging;
using Calx.Practicals.Marking.Values;
using Calx.Practicals.Marking.Words;
using Calx.Practicals.Marking.Written;

namespace Calx.Practicals.Marking;

/// <summary>Marks what one student handed in.</summary>
/// <param name="asked">All values that may be asked: earlier ones stand in later ones, asked or not.</param>
/// <param name="answers">What was asked, in order.</param>
/// <param name="policy">How strictly.</param>
/// <param name="sets">Molar masses by each set of atomic weights that counts, the usual one first.</param>
/// <param name="facts">What judgements are held against.</param>
/// <param name="groups">The class's odd groups, found where they are asked for.</param>
internal sealed class WorkMarker(
    IReadOnlyDictionary<string, AskedValue> asked,
    IReadOnlyList<AskedAnswer> answers,
    MarkingPolicy policy,
    IReadOnlyList<Func<string, double>> sets,
    JudgingFacts facts,
    Lazy<OddGroupsOfClass> groups)
{
    private readonly ValueMarker values = new(sets);

    /// <summary>Marks one of a class.</summary>
    /// <param name="at">The student's place among <paramref name="works"/>.</param>
    /// <param name="works">The whole class: its other readings explain some wrong values.</param>
    /// <param name="readings">The readings of each, no answers written into them.</param>
    /// <returns>A mark for each answer asked, in order.</returns>
    public IReadOnlyList<AnswerMark> Mark(int at, IReadOnlyList<StudentWork> works, IReadOnlyList<OwnNumbers> readings)
    {
        StudentWork work = works[at];
        var own = new OwnNumbers(work, asked, facts.Practical);
        var marks = new Dictionary<string, AnswerMark>(StringComparer.Ordinal);
        foreach (AskedAnswer answer in answers)
        {
            if (answer is JudgementAnswer judgement)
            {
                marks.Add(answer.Id, Judge(judgement, work, own, marks));
                continue;
            }

            AskedValue value = asked[answer.Id];
            AnswerText text = Padded(value, work, own, AnswerText.Read(work.Answers.GetValueOrDefault(answer.Id)));
            AnswerMark mark = Mark(value, work, text, own, id => marks[id].Verdict is Verdict.Right or Verdict.RoundedEarly);
            if (mark.Verdict is Verdict.Wrong && text is AnswerText.Number number)
            {
                mark = mark with { Ideas = IdeasOf(value, Meant(value, number), own, work, Others(value, at, works, readings)) };
            }

            marks.Add(answer.Id, mark);
            if (text is AnswerText.Number kept)
            {
                own.Write(answer.Id, Meant(value, kept), Unrounded(value, own, Meant(value, kept), mark.Verdict));
            }
        }

        return Penalties.Taken([.. answers.Select(a => marks[a.Id])], policy);
    }

    /// <summary>A difference from a spreadsheet that keeps no zeros at the end has the decimals of its readings.</summary>
    private static AnswerText Padded(AskedValue value, StudentWork work, OwnNumbers own, AnswerText text) =>
        value.IsDifference && text is AnswerText.Number { Decimals: int decimals } number && decimals < own.DecimalsOf(value.Expanded) && own.DecimalsOf(value.Expanded) is < int.MaxValue and var there && work.WithoutZeros.Contains(value.Answer.Id)
            ? number with { Decimals = there, HalfWidth = 0.5 * Math.Pow(10, -there), Figures = number.Figures + there - decimals }
            : text;

    private AnswerMark Judge(JudgementAnswer answer, StudentWork work, OwnNumbers own, Dictionary<string, AnswerMark> marks)
    {
        string given = work.Answer(answer.Id);
        if (given.Length == 0)
        {
            return new AnswerMark(answer, given, new Verdict.Missing(), 0);
        }

        double Exact(AnswerDefinition value) => own.Exact(asked[value.Id], sets[0]);
        double Written(AnswerDefinition value) => own.HasWritten(value.Id) ? own.AtHand(value.Id) : double.NaN;
        Judged judged = answer switch
        {
            JudgementAnswer.OfFormula formula => FormulaJudge.Of(
                formula, given, Exact(formula.Ratio), Written(formula.Ratio), !marks.TryGetValue(formula.Ratio.Id, out AnswerMark? ratio) || ratio.Verdict is Verdict.Right or Verdict.RoundedEarly),
            JudgementAnswer.OfCompleteness complete => CompletenessJudge.Of(complete, given, work, own, facts),
            JudgementAnswer.OfOddGroup => groups.Value.Judge(given),
            JudgementAnswer.OfCause cause => CauseJudge.Of(cause, given, asked[cause.Value.Id], own, Exact(cause.Value), facts),
            JudgementAnswer.OfImprovement improvement => ImprovementJudge.Of(
                improvement, given, work.Answer(improvement.Cause.Id), !marks.TryGetValue(improvement.Cause.Id, out AnswerMark? named) || named.Verdict is Verdict.Right,
                asked[improvement.Cause.Value.Id], Exact(improvement.Cause.Value), facts),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return new AnswerMark(answer, given, judged.Verdict, judged.Verdict is Verdict.Right or Verdict.Carried ? answer.Marks : 0)
        {
            ExpectedText = judged.Expected, Ideas = judged.Ideas,
        };
    }

    private AnswerMark Mark(AskedValue value, StudentWork work, AnswerText text, OwnNumbers own, Func<string, bool> isRight)
    {
        AnswerDefinition answer = value.Answer;
        double exact = own.Exact(value, sets[0]);
        double fromOwn = own.WrittenBehind(value).Any() ? own.FromWritten(value, sets[0]) : double.NaN;
        AnswerMark Said(Verdict verdict, int marks = 0, FiguresFault figures = FiguresFault.None, bool wrongUnit = false) =>
            new(answer, work.Answers.GetValueOrDefault(answer.Id) ?? string.Empty, verdict, marks)
            {
                Expected = Known(exact), Own = Known(fromOwn), Figures = figures, HasWrongUnit = wrongUnit,
            };
        switch (text)
        {
            case AnswerText.Nothing:
                return Said(new Verdict.Missing());
            case AnswerText.Unreadable unreadable:
                return Said(new Verdict.Unreadable(unreadable.Reason));
            case AnswerText.Number number:
                if (!double.IsFinite(exact) && !double.IsFinite(fromOwn))
                {
                    return Said(new Verdict.CannotMark(MissingReadings(value, own)));
                }

                Verdict verdict = values.Of(value, own, Meant(value, number), isRight);
                FiguresFault figures = FiguresRule.Of(value.IsDifference, own.DecimalsOf(value.Expanded), Figures(value, own), InUnit(value, number));
                figures = figures == FiguresFault.TooFew && work.WithoutZeros.Contains(answer.Id) ? FiguresFault.None : figures;
                if (verdict is Verdict.Wrong && UnitRule.Factor(answer.Unit, number.Unit) != 1 && values.Of(value, own, Meant(value, number with { Unit = string.Empty }), isRight) is var bare and not Verdict.Wrong)
                {
                    // The number is right and the unit behind it is not: that is lost once a paper, not the value.
                    return Said(bare, Earned(answer.MarksFor, bare, figures, wrongUnit: true), figures, wrongUnit: true);
                }

                bool wrongUnit = UnitRule.IsWrong(answer.Unit, number.Unit) || (policy.UnitsAsked && number.Unit.Length == 0 && answer.Unit != "1");
                return Said(verdict, Earned(answer.MarksFor, verdict, figures, wrongUnit), figures, wrongUnit);
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    /// <summary>What an accepted value may have been before it was rounded: by each set of atomic weights that gives it as it is written.</summary>
    private double[] Unrounded(AskedValue value, OwnNumbers own, AnswerText.Number given, Verdict verdict)
    {
        IEnumerable<double> values = verdict switch
        {
            Verdict.Right or Verdict.RoundedEarly => sets.Select(set => own.Exact(value, set)),
            Verdict.Carried => sets.Select(set => own.Own(value, set)).SelectMany(range => (double[])[range.Low, range.High]),
            _ => [],
        };
        return [.. values.Where(v => double.IsFinite(v) && given.CouldBe(v))];
    }

    private static int Earned(AnswerMarks marks, Verdict verdict, FiguresFault figures, bool wrongUnit) => verdict switch
    {
        Verdict.Right or Verdict.RoundedEarly => marks.Method + marks.Accuracy + Rest(marks, figures, wrongUnit),
        Verdict.Carried => marks.Method + Rest(marks, figures, wrongUnit),
        _ => 0,
    };

    private static int Rest(AnswerMarks marks, FiguresFault figures, bool wrongUnit) =>
        (figures == FiguresFault.None ? marks.Figures : 0) + (wrongUnit ? 0 : marks.Unit);

    private IdeaFindings IdeasOf(
        AskedValue value, AnswerText.Number given, OwnNumbers own, StudentWork work, IReadOnlyList<(string Name, double Value)> others)
    {
        // Somebody who wrote the values on the way has probably used them; the whole way from the readings is looked at as well.
        const double WholeWayThen = 0.3;
        bool steps = own.WrittenBehind(value).Any();
        var found = new List<WeighedIdea>(value.FromReadings.Weigh(given, own.Reading, sets, steps ? WholeWayThen : 1));
        if (steps)
        {
            found.AddRange(value.FromAnswers.Weigh(given, own.AtHand, sets, 1 - WholeWayThen).Select(f => f with { Tree = null }));
        }

        double exact = own.Exact(value, sets[0]);
        found.AddRange(SlipSearch.InAnswer(given, exact));
        if (steps)
        {
            found.AddRange(SlipSearch.InAnswer(given, own.FromWritten(value, sets[0])));
        }

        found.AddRange(SlipSearch.InReadings(
            given,
            work.Readings.Where(r => value.Expanded.Names.Contains(r.Key) && r.Value.Count > 0).Select(r => (r.Key, r.Value[^1].ToString())),
            (id, other) => ValueRange.Of(value.Expanded, name => ValueRange.Of(name == id ? other : own.Reading(name)), sets[0]).Middle));
        found.AddRange(SlipSearch.OtherGroups(given, others));
        return IdeaFindings.Of(
            found,
            value.FromReadings.Unexplained(given, own.Reading, sets[0]),
            two => steps ? null : value.FromReadings.TellApart(two, own.Reading, sets[0]));
    }

    private List<(string Name, double Value)> Others(AskedValue value, int at, IReadOnlyList<StudentWork> works, IReadOnlyList<OwnNumbers> readings)
    {
        var others = new List<(string, double)>();
        double own = readings[at].Exact(value, sets[0]);
        for (int i = 0; i < works.Count; i++)
        {
            double other = i == at ? double.NaN : readings[i].Exact(value, sets[0]);
            if (double.IsFinite(other) && other != own)
            {
                others.Add((works[i].Student, other));
            }
        }

        return others;
    }

    /// <summary>The number in the unit asked for, and the right way up where it says that it is the other way round.</summary>
    private static AnswerText.Number Meant(AskedValue value, AnswerText.Number number)
    {
        double factor = UnitRule.Factor(value.Answer.Unit, number.Unit);
        AnswerText.Number there = factor == 1 ? number : number.As(number.Value * factor, number.HalfWidth * factor);
        return RatioLabel.IsOtherWay(value.Answer.Label, number.Said) && there.Value != 0
            ? there.As(1 / there.Value, there.HalfWidth / (there.Value * there.Value))
            : there;
    }

    /// <summary>The number as written, its decimals those that it has in the unit asked for: 240 mg are 0.240 g, and their last zero may be one of place alone.</summary>
    private static AnswerText.Number InUnit(AskedValue value, AnswerText.Number number)
    {
        double factor = UnitRule.Factor(value.Answer.Unit, number.Unit);
        return factor == 1 ? number : number with { Decimals = null };
    }

    /// <summary>Figures that the readings leave: those of the smallest difference of two readings in it.</summary>
    private int Figures(AskedValue value, OwnNumbers own)
    {
        double[] differences =
        [
            .. value.Expanded.Nodes.OfType<Measurement.Expressions.BinaryOperation>().Where(n => n.Operator == Measurement.Expressions.Operator.Subtract)
                .Select(n => Math.Abs(ValueRange.Of(n, name => ValueRange.Of(own.Reading(name)), sets[0]).Middle) / Math.Pow(10, -own.DecimalsOf(n))).Where(d => d > 0),
        ];
        return differences.Length == 0 ? 3 : Math.Max(1, 1 + (int)Math.Floor(Math.Log10(differences.Min() * (1 + 1e-9))));
    }

    private string MissingReadings(AskedValue value, OwnNumbers own)
    {
        string[] missing = [.. value.Expanded.Names.Where(name => double.IsNaN(own.Reading(name))).Select(name => facts.Practical.Readings.FirstOrDefault(r => r.Id == name)?.Label ?? name)];
        return missing.Length == 0 ? MarkReasons.Texts.ReadingsGiveNothing : MarkReasons.Texts.ReadingsMissing(string.Join(", ", missing.Select(MarkReasons.Texts.QuotedReading)));
    }

    private static double? Known(double value) => double.IsFinite(value) ? value : null;
}
