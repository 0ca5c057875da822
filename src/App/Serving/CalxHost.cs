using System.Text.Json;
using Calx.App.Learning;
using Calx.App.Live;
using Calx.App.Pages;
using Calx.App.Pages.Answers;
using Calx.App.Pages.Students;
using Calx.App.Pages.Keeping;
using Calx.App.Pages.Lessons;
using Calx.App.Pages.Practicals;
using Calx.App.Pages.Live;
using Calx.App.Pages.Marking;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.Repositories;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;

namespace Calx.App.Serving;

/// <summary>The web program put together: what it listens on, what stands before every address, and the addresses.</summary>
public static class CalxHost
{
    /// <summary>Bytes of a request's body; an import says its own, larger limit.</summary>
    private const long LargestBody = 256 * 1024;

    private const int ThreadsFromTheStart = 16;

    /// <summary>Builds it; it listens once it is started.</summary>
    /// <param name="options">How it serves.</param>
    /// <param name="store">The records, open.</param>
    /// <param name="clock">The time.</param>
    public static WebApplication Build(ServeOptions options, RecordStore store, TimeProvider clock)
    {
        // While the engine works out one lesson, entries of the others go on: as many threads from the start as lessons may ask at once.
        ThreadPool.GetMinThreads(out _, out int ports);
        ThreadPool.SetMinThreads(ThreadsFromTheStart, ports);
        WebApplicationBuilder builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseKestrelCore();
        Listening.Configure(builder.WebHost, options, LargestBody);
        builder.Services.AddLogging(log => log.AddSimpleConsole(console => console.SingleLine = true).SetMinimumLevel(LogLevel.Warning)
            .AddFilter("Microsoft.AspNetCore.Server.Kestrel", LogLevel.Error)
            .AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error));
        Register(builder.Services, options, store, clock);
        WebApplication web = builder.Build();
        web.Use((context, next) => Faults.Catch(context, next));
        web.UseRouting();
        web.Use(next => context => context.RequestServices.GetRequiredService<Gate>().Pass(context, next));
        AllPages.Map(web);
        return web;
    }

    private static void Register(IServiceCollection services, ServeOptions options, RecordStore store, TimeProvider clock)
    {
        services.AddRoutingCore();
        services.AddRazorComponents();
        services.AddDataProtection().SetApplicationName("calx");
        services.AddSingleton<IConfigureOptions<KeyManagementOptions>>(
            new ConfigureOptions<KeyManagementOptions>(keys => keys.XmlRepository = new KeyRing(store)));
        services.ConfigureHttpJsonOptions(json => json.SerializerOptions.PropertyNamingPolicy = JsonNamingPolicy.CamelCase);
        services.Configure<FormOptions>(form =>
        {
            form.ValueCountLimit = 2000;
            form.ValueLengthLimit = 16 * 1024;
            form.MultipartBodyLengthLimit = LargestBody;
        });
        services.AddSingleton(options);
        services.AddSingleton(store);
        services.AddSingleton(clock);
        services.AddSingleton<TeachersKey>(_ => new TeachersKey(store, options.OpenToRoom));
        services.AddSingleton<Cookies>();
        services.AddSingleton<GuessLimit>();
        services.AddSingleton<OwnHosts>();
        services.AddSingleton<SameOrigin>();
        services.AddSingleton<Gate>();
        services.AddSingleton<SafetyGate>();
        services.AddSingleton<LessonRooms>();
        services.AddSingleton<Doors>();
        services.AddSingleton<KnownBalances>();
        services.AddSingleton<TableDesk>();
        services.AddSingleton<AnswerFeedback>();
        services.AddSingleton<AnswersDesk>();
        services.AddSingleton<LiveDesk>();
        services.AddSingleton<LivePages>();
        services.AddSingleton<SafetyGate>();
        services.AddSingleton<Shelf>();
        services.AddSingleton<PlanDesk>();
        services.AddSingleton<LessonList>();
        services.AddSingleton<History>();
        services.AddSingleton<PastLessons>();
        services.AddSingleton<NumberDesk>();
        services.AddSingleton<LessonDesk>();
        services.AddSingleton<LessonMarking>();
        services.AddSingleton<CommentTexts>();
        services.AddSingleton<MarkingDesk>();
        services.AddSingleton<WordDesk>();
        services.AddSingleton<Exports>();
        services.AddSingleton<RoomCheck>();
    }
}
