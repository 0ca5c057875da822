namespace Calx.Practicals.Definition;

/// <summary>Where materials and free water are: in the crucible, on the anode, in the beaker.</summary>
public sealed class Place(string id, string label, bool sealedAndRigid, FilePosition at)
{
    /// <summary>Its id, unique among parts and places.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people.</summary>
    public string Label { get; } = label;

    /// <summary>Whether it can neither vent nor swell, so that no gas may be made in it.</summary>
    public bool SealedAndRigid { get; } = sealedAndRigid;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
