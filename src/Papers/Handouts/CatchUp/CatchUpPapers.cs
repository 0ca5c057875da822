using Calx.Papers.Documents;
using Calx.Practicals.CatchUp;

namespace Calx.Papers.Handouts.CatchUp;

/// <summary>The papers of a class's packs: a sheet a student, and one key for the teacher.</summary>
public static class CatchUpPapers
{
    /// <summary>Makes them: the sheets in the order of the packs, then the key.</summary>
    /// <param name="setting">The lesson.</param>
    /// <param name="packs">The packs, at least one.</param>
    public static IReadOnlyList<Paper> Of(CatchUpSetting setting, IReadOnlyList<CatchUpPack> packs)
    {
        ArgumentNullException.ThrowIfNull(setting);
        ArgumentNullException.ThrowIfNull(packs);
        return [.. CatchUpSheet.Of(setting, packs), CatchUpKey.Of(setting, packs)];
    }
}
