using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>The practical's own id becomes the name of its file, and some computers do not tell capitals from small letters there.</summary>
internal static class IdCheck
{
    public static IEnumerable<CheckFinding> Of(Practical practical, FilePlaces places)
    {
        if (practical.Id.Any(char.IsAsciiLetterUpper))
        {
            yield return CheckFinding.At(
                places.Of("practical"),
                $"the id '{practical.Id}' has capitals, and it is the name of a file too",
                $"write small letters: 'practical: {practical.Id.ToLowerInvariant()}'");
        }
    }
}
