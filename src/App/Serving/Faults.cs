using Calx.Records.Storage;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Calx.App.Serving;

/// <summary>What a request that went wrong is answered with: a sentence, never a stack trace. The trace goes to the program's own
/// messages, without what was typed.</summary>
public static class Faults
{
    private static readonly Action<ILogger, string, string, Exception?> Mistake = LoggerMessage.Define<string, string>(
        LogLevel.Error, new EventId(1, "mistake"), "A mistake in the program at {Method} {Address}");

    /// <summary>Runs the rest of the request.</summary>
    public static async Task Catch(HttpContext context, RequestDelegate next)
    {
        try
        {
            await next(context);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The asker has gone.
        }
        catch (BadHttpRequestException bad)
        {
            await Answer(context, bad.StatusCode, "Not understood", "What was sent is not what this address expects, so nothing was changed.");
        }
        catch (InvalidDataException)
        {
            // A form with too many or too long fields.
            await Answer(context, StatusCodes.Status400BadRequest, "Not understood", "The form that was sent is too large or broken, so nothing was changed.");
        }
        catch (StoreUnavailableException trouble)
        {
            context.Response.Headers.RetryAfter = "5";
            await Answer(context, StatusCodes.Status503ServiceUnavailable, "Not kept yet", trouble.Message);
        }
        catch (Exception mistake)
        {
            ILogger log = context.RequestServices.GetRequiredService<ILoggerFactory>().CreateLogger("Calx");
            Mistake(log, context.Request.Method, context.Request.Path, mistake);
            await Answer(
                context, StatusCodes.Status500InternalServerError, "A mistake in the program", "What you typed was not the cause. Go back and try again; what was kept before is still there.");
        }
    }

    private static Task Answer(HttpContext context, int status, string title, string sentence)
    {
        if (context.Response.HasStarted)
        {
            context.Abort();
            return Task.CompletedTask;
        }

        context.Response.Clear();
        SafeHeaders.Put(context);
        return Refusals.Answer(context, status, title, sentence);
    }
}
