using System.Globalization;

namespace Calx.App.Pages.Classes;

/// <summary>School years, which begin in August.</summary>
public static class SchoolYear
{
    private const int FirstMonth = 8;

    /// <summary>The school year of a day, such as <c>2026/27</c>.</summary>
    public static string Of(DateOnly day)
    {
        int first = day.Month >= FirstMonth ? day.Year : day.Year - 1;
        return string.Create(CultureInfo.InvariantCulture, $"{first}/{(first + 1) % 100:00}");
    }
}
