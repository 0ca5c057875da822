using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Http;
using System.Security.Cryptography;

namespace Calx.App.Serving;

/// <summary>
/// The two cookies: who is the teacher, and which seat a device has. Both are sealed, so that nobody can write one, and
/// neither can be read by a script or sent along from another site's page.
/// </summary>
public sealed class Cookies(IDataProtectionProvider protection, TimeProvider clock)
{
    private const string TeacherCookie = "calx-teacher";
    private const string SeatCookie = "calx-seat";

    /// <summary>A school day with its evening; then the passphrase is asked for again.</summary>
    private static readonly TimeSpan TeachersDay = TimeSpan.FromHours(14);

    private readonly ITimeLimitedDataProtector teacher = protection.CreateProtector("teacher").ToTimeLimitedDataProtector();
    private readonly ITimeLimitedDataProtector seat = protection.CreateProtector("seat").ToTimeLimitedDataProtector();

    /// <summary>Whether the request is the teacher's: the seal names the passphrase's own stamp, so that a new passphrase ends
    /// what was begun under the old one.</summary>
    public bool IsTeacher(HttpRequest request, string stamp) => Open(teacher, request, TeacherCookie) == stamp;

    /// <summary>Lets the teacher in.</summary>
    public void AdmitTeacher(HttpContext context, string stamp) =>
        Put(context, TeacherCookie, teacher.Protect(stamp, clock.GetUtcNow() + TeachersDay), SameSiteMode.Strict);

    /// <summary>Shows the teacher out.</summary>
    public static void DismissTeacher(HttpContext context) => context.Response.Cookies.Delete(TeacherCookie);

    /// <summary>The seat that a device has taken, or null.</summary>
    public Seat? SeatOf(HttpRequest request) => Open(seat, request, SeatCookie) is string text ? Seat.Of(text) : null;

    /// <summary>Gives a device a seat. Lax, not strict: a link scanned from the board must still find it.</summary>
    public void Give(HttpContext context, Seat given) =>
        Put(context, SeatCookie, seat.Protect(given.Text, clock.GetUtcNow() + TeachersDay), SameSiteMode.Lax);

    /// <summary>Takes a device's seat back.</summary>
    public static void Leave(HttpContext context) => context.Response.Cookies.Delete(SeatCookie);

    private static string? Open(ITimeLimitedDataProtector protector, HttpRequest request, string name)
    {
        if (!request.Cookies.TryGetValue(name, out string? sealedText) || string.IsNullOrEmpty(sealedText))
        {
            return null;
        }

        try
        {
            return protector.Unprotect(sealedText);
        }
        catch (CryptographicException)
        {
            // Sealed with another key, run out, or written by somebody: as good as none.
            return null;
        }
    }

    private static void Put(HttpContext context, string name, string value, SameSiteMode sameSite) =>
        context.Response.Cookies.Append(name, value, new CookieOptions
        {
            HttpOnly = true,
            IsEssential = true,
            MaxAge = TeachersDay,
            Path = "/",
            SameSite = sameSite,
            Secure = context.Request.IsHttps,
        });
}
