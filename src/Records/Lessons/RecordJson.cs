using System.Text.Json.Nodes;
using Calx.Records.Storage;

namespace Calx.Records.Lessons;

/// <summary>Records as JSON objects, the same in the audit and in archives.</summary>
internal static class RecordJson
{
    public static JsonObject Of(SchoolClass one) => new()
    {
        ["id"] = one.Id.ToString(), ["year"] = one.Year, ["name"] = one.Name, ["namesForgotten"] = one.NamesForgotten,
    };

    public static JsonObject Of(Member one) => new() { ["classId"] = one.ClassId.ToString(), ["number"] = one.Number, ["name"] = one.Name };

    public static JsonObject Of(KeptBalance one) => new()
    {
        ["id"] = one.Id.ToString(), ["letter"] = one.Letter, ["label"] = one.Label, ["resolution"] = one.Resolution,
    };

    public static JsonObject Of(BalanceCheck one) => new()
    {
        ["id"] = one.Id.ToString(),
        ["balanceId"] = one.BalanceId.ToString(),
        ["at"] = Written.Time(one.At),
        ["weight"] = one.Weight.ToString(),
        ["shown"] = one.Shown.ToString(),
        ["by"] = one.By,
        ["note"] = one.Note,
    };

    public static JsonObject Of(Lesson one) => new()
    {
        ["id"] = one.Id.ToString(),
        ["classId"] = one.ClassId.ToString(),
        ["practicalId"] = one.PracticalId,
        ["practicalVersion"] = one.PracticalVersion,
        ["practicalSource"] = one.PracticalSource,
        ["plan"] = one.Plan,
        ["date"] = Written.Date(one.Date),
        ["room"] = one.Room,
        ["groups"] = one.Groups,
        ["minutes"] = one.Minutes,
        ["assessed"] = one.Settings.Assessed,
        ["decideFirst"] = one.Settings.DecideFirst,
        ["trial"] = one.Settings.Trial,
        ["teacher"] = one.Teacher,
        ["period"] = one.Period,
    };

    public static JsonObject Of(Signature one) => new()
    {
        ["practicalId"] = one.PracticalId,
        ["practicalVersion"] = one.PracticalVersion,
        ["fingerprint"] = one.Fingerprint,
        ["initials"] = one.Initials,
        ["at"] = Written.Time(one.At),
    };

    public static JsonObject Of(NumberDecision one) => new()
    {
        ["practicalId"] = one.PracticalId,
        ["practicalVersion"] = one.PracticalVersion,
        ["class"] = one.ClassName,
        ["number"] = one.Number,
        ["was"] = one.Was,
        ["became"] = one.Became,
        ["restsOn"] = one.RestsOn,
        ["lessons"] = one.Lessons,
        ["initials"] = one.Initials,
        ["at"] = Written.Time(one.At),
    };

    /// <summary>The parts of the first that the second has otherwise.</summary>
    public static JsonObject Differing(JsonObject one, JsonObject other) =>
        new(one.Where(p => !JsonNode.DeepEquals(p.Value, other[p.Key])).Select(p => KeyValuePair.Create(p.Key, p.Value?.DeepClone())));
}
