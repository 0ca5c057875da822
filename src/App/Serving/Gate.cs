using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Serving;

/// <summary>Stands before every address: own origin, whom it admits, and the headers of the answer.</summary>
public sealed class Gate(SameOrigin origin, Cookies cookies, TeachersKey key)
{
    private const string VisitorItem = "calx-visitor";

    /// <summary>Who asks, as the gate found it.</summary>
    public static Visitor VisitorOf(HttpContext context) => (Visitor)context.Items[VisitorItem]!;

    /// <summary>The seat of the device that asks, which the address has made sure of.</summary>
    public static Seat SeatOf(HttpContext context) => VisitorOf(context).Seat!;

    /// <summary>Lets a request through or answers it.</summary>
    public Task Pass(HttpContext context, RequestDelegate next)
    {
        SafeHeaders.Put(context);
        if (origin.Refusal(context.Request) is string refusal)
        {
            return Refusals.Answer(context, StatusCodes.Status403Forbidden, "Not from here", refusal);
        }

        var visitor = new Visitor(key.Admits(context.Request, cookies), cookies.SeatOf(context.Request));
        context.Items[VisitorItem] = visitor;
        if (context.GetEndpoint() is not Endpoint endpoint)
        {
            return Refusals.Answer(context, StatusCodes.Status404NotFound, "No such page", "There is nothing at this address. It may have been mistyped.");
        }

        // Routing answers a known address under a wrong method by an endpoint of its own, which says which methods there are.
        if (endpoint is not RouteEndpoint)
        {
            return WrongMethod(context, next);
        }

        Admits? admits = endpoint.Metadata.GetMetadata<Admits>();
        return admits is not null && admits.Lets(visitor) ? next(context) : ShowTheWay(context, admits);
    }

    private static async Task WrongMethod(HttpContext context, RequestDelegate next)
    {
        await next(context);
        if (!context.Response.HasStarted && context.Response.StatusCode == StatusCodes.Status405MethodNotAllowed)
        {
            await Refusals.Answer(
                context, StatusCodes.Status405MethodNotAllowed, "Not in this way", $"This address can be asked by {context.Response.Headers.Allow}, not by {context.Request.Method}.");
        }
    }

    /// <summary>To where the visitor can become one who is let in; a program gets a plain answer.</summary>
    private static Task ShowTheWay(HttpContext context, Admits? admits)
    {
        string? way = admits == Admits.Teacher ? "/sign-in" : admits == Admits.Joined ? "/join" : admits == Admits.AtTheTable ? "/groups" : null;
        if (way is null || !HttpMethods.IsGet(context.Request.Method) || !Refusals.WantsPage(context.Request))
        {
            return Refusals.Answer(
                context, StatusCodes.Status403Forbidden, "Not open to you", $"This is for {admits?.ToString() ?? "nobody"}.");
        }

        string from = context.Request.Path + context.Request.QueryString;
        context.Response.Redirect(admits == Admits.Teacher ? $"{way}?to={Uri.EscapeDataString(from)}" : way);
        return Task.CompletedTask;
    }
}
