using System.Globalization;
using Calx.App.Live;
using Calx.Practicals.Marking;
using Calx.Records.Journal;

namespace Calx.App.Tests.Live;

/// <summary>What the students of a lesson have to be marked. The readings of the groups are invented; class 9F of Larkmoor School.</summary>
public sealed class LessonWorksTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Each_student_who_is_here_has_the_readings_of_the_group_and_one_who_is_away_is_left_out()
    {
        await using Class9F one = await Class9F.Start("Ada", "Bo", "Cleo", "Dev");
        await one.Seat(1, 1);
        await one.Seat(2, 1);
        await one.Seat(3, 2);
        await one.Seat(4, 2);
        await one.Member(3, Acts.Presence, MemberState.Late);
        await one.Member(4, Acts.Presence, MemberState.Away);
        await one.Read(1, "empty", "24.31");
        await one.Read(1, "before", "24.55");
        await one.Read(1, "after", "24.70");
        await one.Read(1, "after2", "24.71");
        await one.Read(2, "empty", "25.02");
        LessonWorks works = await one.Works();
        Assert.Equal(["Ada", "Bo", "Cleo"], works.Works.Select(w => w.Student));
        Assert.Equal(["1", "1", "2"], works.Works.Select(w => w.Group));
        Assert.Equal("empty 24.31; before 24.55; after 24.70 24.71", Said(works, "Ada"));
        Assert.Equal(Said(works, "Ada"), Said(works, "Bo"));
        Assert.Equal("empty 25.02", Said(works, "Cleo"));
    }

    [Fact]
    public async Task A_corrected_reading_counts_as_corrected_and_a_second_one_typed_beside_it_does_not()
    {
        await using Class9F one = await Class9F.Start("Ada");
        await one.Seat(1, 1);
        EntryId first = await one.Read(1, "empty", "24.13");
        await one.Read(1, "empty", "24.31", replaces: first);
        await one.Read(1, "before", "24.55");
        await one.Read(1, "before", "99.99");
        Assert.Equal("empty 24.31; before 24.55", Said(await one.Works(), "Ada"));
    }

    [Fact]
    public async Task Who_changed_the_group_has_the_readings_of_the_new_one_and_keeps_the_own_answers()
    {
        await using Class9F one = await Class9F.Start("Ada");
        await one.Seat(1, 1);
        await one.Read(1, "empty", "24.31");
        await one.Read(2, "empty", "25.02");
        await one.Answer(1, "massMagnesium", "0.24", "g");
        await one.Seat(1, 2);
        StudentWork work = Assert.Single((await one.Works()).Works);
        Assert.Equal("2", work.Group);
        Assert.Equal("25.02", work.Readings["empty"].Single().ToString());
        Assert.Equal("0.24 g", work.Answers["massMagnesium"]);
    }

    [Fact]
    public async Task A_group_that_joined_anothers_data_has_those_and_groups_that_joined_each_other_their_own()
    {
        await using Class9F one = await Class9F.Start("Ada", "Bo", "Cleo", "Dev");
        for (int group = 1; group <= 4; group++)
        {
            await one.Seat(group, group);
            await one.Read(group, "empty", string.Create(CultureInfo.InvariantCulture, $"2{group}.00"));
        }

        await one.Group(1, Acts.Condition, Acts.Conditions.Broken);
        await one.Group(1, Acts.Condition, Acts.Conditions.JoinedPrefix + "2");
        await one.Group(3, Acts.Condition, Acts.Conditions.JoinedPrefix + "4");
        await one.Group(4, Acts.Condition, Acts.Conditions.JoinedPrefix + "3");
        LessonWorks works = await one.Works();
        Assert.Equal(["empty 22.00", "empty 22.00", "empty 23.00", "empty 24.00"], works.Works.Select(w => Said(works, w.Student)));
        // Whose readings they are, so that two groups with one set of readings are not taken for two with the same digits.
        Assert.Equal(["2", "2", "3", "4"], works.Works.Select(w => w.Group));
    }

    [Fact]
    public async Task After_a_broken_crucible_the_readings_of_the_new_start_count_and_simulated_ones_for_who_goes_on_with_them()
    {
        await using Class9F one = await Class9F.Start("Ada", "Bo");
        await one.Seat(1, 1);
        await one.Seat(2, 2);
        foreach (int group in (int[])[1, 2])
        {
            await one.Read(group, "empty", "24.31");
            await one.Group(group, Acts.Condition, Acts.Conditions.Broken);
        }

        Assert.Equal("empty 24.31", Said(await one.Works(), "Ada"));
        await one.Group(1, Acts.Condition, Acts.Conditions.StartedAgain);
        await one.Group(2, Acts.Condition, Acts.Conditions.Simulated);
        await one.Read(1, "empty", "25.02", trial: 2);
        await one.Read(2, "empty", "26.66", trial: 2);
        LessonWorks works = await one.Works();
        Assert.Equal("empty 25.02", Said(works, "Ada"));
        Assert.Equal("empty 26.66", Said(works, "Bo"));
    }

    [Fact]
    public async Task Who_was_away_has_the_readings_of_the_pack_up_to_where_the_answers_say_that_heating_ended()
    {
        await using Class9F one = await Class9F.Start("Ada", "Bo");
        await one.Member(2, Acts.Presence, MemberState.Away);
        Assert.Equal(["Ada"], (await one.Works()).Works.Select(w => w.Student));
        // The mass of oxygen is 0.10, 0.15 or 0.16 g, after one, two or three heatings; the sensible end is after the third.
        await one.Member(2, Acts.CatchUp, """
            {"readings":[
              {"id":"empty","time":1,"shown":"24.00","true":24.001,"shift":0},{"id":"before","time":1,"shown":"24.24","true":24.241,"shift":0},
              {"id":"after","time":1,"shown":"24.34","true":24.341,"shift":0},{"id":"after","time":2,"shown":"24.39","true":24.391,"shift":0},
              {"id":"after","time":3,"shown":"24.40","true":24.401,"shift":0}],
             "planted":[],"together":0,
             "decisions":[{"heating":1,"decision":"reheat","spoiled":0.9,"why":""},{"heating":2,"decision":"reheat","spoiled":0.5,"why":""},{"heating":3,"decision":"constant-mass","spoiled":0,"why":""}]}
            """);
        Assert.Equal(["24.34", "24.39", "24.40"], After(await one.Works()));
        EntryId oxygen = await one.Answer(2, "massOxygen", "0.15", "g");
        Assert.Equal(["24.34", "24.39"], After(await one.Works()));
        oxygen = await one.Answer(2, "massOxygen", "0,10 g", replaces: oxygen);
        Assert.Equal(["24.34"], After(await one.Works()));
        // What fits none of them leaves the sensible end.
        await one.Answer(2, "massOxygen", "7.77", "g", replaces: oxygen);
        Assert.Equal(["24.34", "24.39", "24.40"], After(await one.Works()));
        Assert.Null((await one.Works()).Works[1].Group);

        string[] After(LessonWorks works) => [.. works.Works.Single(w => w.Student == "Bo").Readings["after"].Select(r => r.ToString())];
    }

    [Fact]
    public async Task Who_was_away_without_a_pack_and_answered_is_marked_by_the_group()
    {
        await using Class9F one = await Class9F.Start("Ada");
        await one.Seat(1, 1);
        await one.Member(1, Acts.Presence, MemberState.Away);
        await one.Read(1, "empty", "24.31");
        Assert.Empty((await one.Works()).Works);
        await one.Answer(1, "massMagnesium", "0.24 g", "g");
        LessonWorks works = await one.Works();
        Assert.Equal("empty 24.31", Said(works, "Ada"));
        Assert.Equal("0.24 g", works.Works[0].Answers["massMagnesium"]);
    }

    [Fact]
    public async Task Students_of_one_name_are_told_apart_by_their_numbers_and_forgotten_names_leave_numbers()
    {
        await using Class9F one = await Class9F.Start("Ada", "Bo", "ada");
        Assert.Equal(["Ada (no. 1)", "Bo", "ada (no. 3)"], (await one.Works()).Works.Select(w => w.Student));
        await one.Taught.Host.Store.ForgetNames(one.Taught.Lesson.ClassId, "teacher", Cancel);
        Assert.Equal(["no. 1", "no. 2", "no. 3"], (await one.Works()).Works.Select(w => w.Student));
    }

    [Fact]
    public async Task A_teachers_mark_is_an_overruling_that_knows_what_it_was_for()
    {
        await using Class9F one = await Class9F.Start("Ada");
        EntryId answer = await one.Answer(1, "massMagnesium", "0.42", "g");
        EntryId mark = await one.Mark(1, "massMagnesium", 1, "digits exchanged, method right");
        LessonWorks works = await one.Works();
        Assert.Equal(new Overruling("Ada", "massMagnesium", 1, "digits exchanged, method right", "0.42 g"), Assert.Single(works.Overrulings));
        Assert.False(works.Each[0].DecisionOn("massMagnesium")!.HasChanged);

        await one.Answer(1, "massMagnesium", "0.24", "g", replaces: answer);
        works = await one.Works();
        Assert.Equal("0.42 g", Assert.Single(works.Overrulings).Given);
        Assert.True(works.Each[0].DecisionOn("massMagnesium")!.HasChanged);

        await one.Mark(1, "massMagnesium", 0, "looked again", replaces: mark);
        works = await one.Works();
        Assert.Equal((0, "0.24 g"), (Assert.Single(works.Overrulings).Marks, works.Overrulings[0].Given));
        Assert.Equal(2, works.Each[0].DecisionOn("massMagnesium")!.Cell.History.Count);
    }

    [Fact]
    public async Task A_mark_that_was_taken_back_is_no_overruling_and_stays_to_be_seen()
    {
        await using Class9F one = await Class9F.Start("Ada");
        await one.Mark(1, "ratio", 1, "by hand");
        KeptEntry kept = (await one.Works()).Each[0].DecisionOn("ratio")!.Cell.Current;
        await one.Write(JournalEntry.SettingAside(NewEntryId.Draw(), kept.Entry, "teacher", DateTimeOffset.UnixEpoch, "a slip of mine"));
        LessonWorks works = await one.Works();
        Assert.Empty(works.Overrulings);
        Assert.Equal(2, works.Each[0].DecisionOn("ratio")!.Cell.History.Count);
    }

    private static string Said(LessonWorks works, string student) => string.Join("; ", works.Works.Single(w => w.Student == student).Readings
        .Select(r => $"{r.Key} {string.Join(' ', r.Value)}"));
}
