using Calx.App.Serving;

namespace Calx.App.Tests.Serving;

/// <summary>How a teacher chooses the passphrase on the terminal.</summary>
public sealed class PassphraseChoiceTests
{
    private const string Good = "four plain words here";

    [Fact]
    public void The_rule_is_said_before_the_first_question_and_the_passphrase_is_typed_twice()
    {
        (string? chosen, IReadOnlyList<string> seen) = Choose(Good, Good);
        Assert.Equal(Good, chosen);
        Assert.Contains("Choose a passphrase", seen[0], StringComparison.Ordinal);
        Assert.Contains("At least 10 characters", seen[1], StringComparison.Ordinal);
        Assert.Equal(["New passphrase: ", "The same again: "], seen.Skip(2).Take(2));
    }

    [Fact]
    public void Two_that_differ_are_not_taken_and_the_next_try_is()
    {
        (string? chosen, IReadOnlyList<string> seen) = Choose(Good, "four plain words hear", Good, Good);
        Assert.Equal(Good, chosen);
        Assert.Contains("The two do not agree. Try again.", seen);
    }

    [Fact]
    public void One_that_is_too_short_is_not_asked_for_a_second_time()
    {
        (string? chosen, IReadOnlyList<string> seen) = Choose("short", Good, Good);
        Assert.Equal(Good, chosen);
        Assert.Contains(seen, s => s.StartsWith("At least 10 characters are needed", StringComparison.Ordinal));
    }

    [Fact]
    public void After_three_tries_it_ends_and_says_what_to_do()
    {
        (string? chosen, IReadOnlyList<string> seen) = Choose("short", Good, "other plain words", "aaaaaaaaaaaa", Good, Good);
        Assert.Null(chosen);
        Assert.Contains("--passphrase-file FILE", seen[^1], StringComparison.Ordinal);
        Assert.Equal(3, seen.Count(s => s == "New passphrase: "));
    }

    private static (string? Chosen, IReadOnlyList<string> Seen) Choose(params string[] typed)
    {
        var answers = new Queue<string>(typed);
        var seen = new List<string>();
        string? chosen = PassphraseChoice.Ask(
            question =>
            {
                seen.Add(question);
                return answers.Dequeue();
            },
            seen.Add);
        return (chosen, seen);
    }
}
