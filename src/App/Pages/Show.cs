using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Calx.App.Pages;

/// <summary>Answers with a page or sends on to one.</summary>
public static class Show
{
    /// <summary>A page, rendered whole before it is sent.</summary>
    /// <typeparam name="TPage">The component; it takes one parameter, <c>Model</c>.</typeparam>
    /// <param name="model">What it shows.</param>
    /// <param name="status">The HTTP status.</param>
    public static IResult Page<TPage>(object model, int status = StatusCodes.Status200OK)
        where TPage : IComponent => new RazorComponentResult<TPage>(new Dictionary<string, object?> { ["Model"] = model })
        {
            StatusCode = status,
            PreventStreamingRendering = true,
        };

    /// <summary>After a change: see the page, so that loading it again changes nothing again.</summary>
    public static IResult See(string address) => TypedResults.Redirect(address, permanent: false, preserveMethod: false);

    /// <summary>There is no such lesson, class or practical.</summary>
    public static IResult Nothing(string what) =>
        Page<NothingPage>(what, StatusCodes.Status404NotFound);
}
