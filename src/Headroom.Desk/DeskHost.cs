using Headroom.Desk.Serving;
using Headroom.Desk.Tasks;
using Headroom.Desk.Work;
using Headroom.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Headroom.Desk;

/// <summary>Serves the desk: the whole job in pages, for one person at one machine.</summary>
public static class DeskHost
{
    /// <summary>The most bytes that a request may bring: a job with its sheets.</summary>
    public const long MostBytes = 4 * 1024 * 1024;

    // A survey of a school in one form: more fields than any of these.
    private const int MostFields = 60_000;

    /// <summary>Serves until it is stopped.</summary>
    /// <param name="settings">How.</param>
    /// <param name="told">Told the address under which it can be reached, when it can be.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="StoreException">The store cannot be worked with.</exception>
    /// <exception cref="IOException">The address is taken.</exception>
    public static async Task Run(DeskSettings settings, Action<string> told, CancellationToken stop)
    {
        await using var app = Build(settings);
        await app.StartAsync(stop).ConfigureAwait(false);
        told(app.Urls.First());
        await app.WaitForShutdownAsync(stop).ConfigureAwait(false);
    }

    /// <summary>Builds the desk without starting it.</summary>
    /// <param name="settings">How it is to be served.</param>
    /// <param name="change">Changes how it is reached, for tests; null to listen at the address.</param>
    /// <exception cref="StoreException">The store cannot be worked with.</exception>
    public static WebApplication Build(DeskSettings settings, Action<IWebHostBuilder>? change = null)
    {
        var store = JobStore.Open(settings.Place, settings.Clock);
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { ApplicationName = "headroom", ContentRootPath = AppContext.BaseDirectory });
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = MostBytes;
        });
        builder.WebHost.UseUrls(settings.Address.ToString());
        change?.Invoke(builder.WebHost);
        AddServices(builder.Services, settings, store);
        var app = builder.Build();
        Guards.Use(app);
        app.UseRouting();
        Routes.Map(app);
        return app;
    }

    private static void AddServices(IServiceCollection services, DeskSettings settings, JobStore store)
    {
        services.AddSingleton(_ => store);
        services.AddSingleton(settings);
        services.AddSingleton(settings.Clock);
        services.AddSingleton<ModelShelf>();
        services.AddSingleton<JobShelf>();
        services.AddSingleton<JobSaving>();
        services.AddSingleton<TaskRunner>();
        services.AddSingleton<IHostedService>(all => all.GetRequiredService<TaskRunner>());
        services.AddHttpContextAccessor();
        services.AddRoutingCore();
        services.AddRazorComponents();
        services.AddAntiforgery(forms => forms.Cookie.Name = "headroom-forms");
        // Beside the jobs and not in the user's home: who has the folder has both.
        services.AddDataProtection().SetApplicationName("headroom").PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(settings.Place.Folder, "keys")));
        services.Configure<FormOptions>(form =>
        {
            form.ValueCountLimit = MostFields;
            form.MultipartBodyLengthLimit = MostBytes;
        });
    }
}
