using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Live;

/// <summary>The program's own clock, for what is typed on a page without script: there the time received is the time typed.</summary>
public static class ServerTime
{
    /// <summary>The time now.</summary>
    public static DateTimeOffset Of(HttpContext context) => context.RequestServices.GetRequiredService<TimeProvider>().GetUtcNow();
}
