using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Calx.Practicals.Definition;
using Calx.Practicals.Clock;

namespace Calx.App.Live;

/// <summary>
/// What a safety check was made of, as one short text: the practical's own file, the sample, the heatings, and what is left out or
/// moved. Where any of them changes, the text does too, and the check is asked for again.
/// </summary>
public static class SafetyFingerprint
{
    private const int Digits = 32;

    /// <summary>The text: 32 hexadecimal digits.</summary>
    public static string Of(PlanSettings plan)
    {
        Practical practical = plan.Practical;
        string checkedPlan = string.Join(
            '\n',
            practical.Id,
            practical.Version.ToString(CultureInfo.InvariantCulture),
            plan.SampleInGrams.ToString("R", CultureInfo.InvariantCulture),
            plan.Heatings.ToString(CultureInfo.InvariantCulture),
            string.Join(',', plan.LeftOut.Order(StringComparer.Ordinal)),
            string.Join(',', plan.Moved.Order(StringComparer.Ordinal)),
            practical.SourceText);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(checkedPlan)))[..Digits];
    }
}
