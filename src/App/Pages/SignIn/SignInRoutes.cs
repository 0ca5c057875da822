using Calx.App.Serving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.SignIn;

/// <summary>Where the teacher gives the passphrase.</summary>
public static class SignInRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/sign-in", (string? to) => Show.Page<SignInPage>(new SignInModel(Own(to), null))).WithMetadata(Admits.Anybody);
        routes.MapPost("/sign-in", SignIn).WithMetadata(Admits.Anybody);
        routes.MapPost("/sign-out", (HttpContext context) =>
        {
            Cookies.DismissTeacher(context);
            return Show.See("/sign-in");
        }).WithMetadata(Admits.Anybody);
    }

    private static async Task<IResult> SignIn(HttpContext context, TeachersKey key, Cookies cookies, GuessLimit guesses)
    {
        FormFields form = await FormFields.Of(context);
        string to = Own(form["to"]);
        string address = context.Connection.RemoteIpAddress?.ToString() ?? "";
        if (!guesses.MayTry(address))
        {
            return Show.Page<SignInPage>(new SignInModel(to, "Too many wrong passphrases. Wait a minute and try again."), StatusCodes.Status429TooManyRequests);
        }

        if (!key.Opens(form["passphrase"]))
        {
            guesses.Missed(address);
            return Show.Page<SignInPage>(new SignInModel(to, "That is not the passphrase."), StatusCodes.Status403Forbidden);
        }

        cookies.AdmitTeacher(context, key.Stamp);
        return Show.See(to);
    }

    /// <summary>Only an address of this program's own: nobody is sent elsewhere after signing in.</summary>
    private static string Own(string? to) => to is { Length: > 0 and < 500 } && to[0] == '/' && !to.StartsWith("//", StringComparison.Ordinal)
        && !to.Contains('\\', StringComparison.Ordinal) && !to.Any(char.IsControl) ? to : "/";
}
