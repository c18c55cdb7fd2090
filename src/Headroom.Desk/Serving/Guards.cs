using System.Security.Cryptography;
using Headroom.Store;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Headroom.Desk.Serving;

/// <summary>What every request passes: only this machine's names, no form from elsewhere, strict rules for browsers, and faults said in a page.</summary>
internal static class Guards
{
    private const string Policy = "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /// <summary>Puts them in front of everything.</summary>
    public static void Use(WebApplication app)
    {
        app.Use(Headers);
        app.Use(Faults);
        app.Use(OnlyHere);
        app.Use(OnlyOwnForms);
    }

    private static Task Headers(HttpContext http, RequestDelegate next)
    {
        var headers = http.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        return next(http);
    }

    // A page elsewhere may lead a name of its own to this machine: only names that can be nobody else's are answered.
    private static Task OnlyHere(HttpContext http, RequestDelegate next) => DeskAddress.IsThisMachine(http.Request.Host.Host)
        ? next(http)
        : http.Refuse(StatusCodes.Status400BadRequest, "The desk answers to 127.0.0.1, [::1] and localhost only.", "Open it under one of these.");

    private static async Task OnlyOwnForms(HttpContext http, RequestDelegate next)
    {
        // Read here, what is too much is refused as that, and not as a form from elsewhere.
        if (HttpMethods.IsPost(http.Request.Method) && http.Request.HasFormContentType)
            await http.Request.ReadFormAsync(http.RequestAborted).ConfigureAwait(false);
        var forms = http.RequestServices.GetRequiredService<IAntiforgery>();
        if (HttpMethods.IsPost(http.Request.Method) && !await forms.IsRequestValidAsync(http).ConfigureAwait(false))
        {
            await http.Refuse(StatusCodes.Status400BadRequest, "This form is not one of the desk's, or is too old.", "Nothing was changed. Go back, load the page again, and send it once more.").ConfigureAwait(false);
            return;
        }

        if (!http.Request.Path.StartsWithSegments(OwnFiles.Path, StringComparison.Ordinal))
            http.Items[FormToken.Key] = forms.GetAndStoreTokens(http).RequestToken;
        await next(http).ConfigureAwait(false);
    }

    private static async Task Faults(HttpContext http, RequestDelegate next)
    {
        try
        {
            await next(http).ConfigureAwait(false);
        }
        catch (BadHttpRequestException reason) when (!http.Response.HasStarted)
        {
            var large = reason.StatusCode == StatusCodes.Status413PayloadTooLarge;
            await http.Refuse(reason.StatusCode, large ? $"That is more than {DeskHost.MostBytes / (1024 * 1024)} MiB." : "The request cannot be understood.", large ? "See whether it is the right file. Nothing was changed." : "Go back and try again. Nothing was changed.").ConfigureAwait(false);
        }
        catch (InvalidDataException) when (!http.Response.HasStarted)
        {
            await http.Refuse(StatusCodes.Status413PayloadTooLarge, "The form holds more than any job.", "See whether it is the right file. Nothing was changed.").ConfigureAwait(false);
        }
        catch (StoreException reason) when (!http.Response.HasStarted)
        {
            await http.Refuse(StatusCodes.Status503ServiceUnavailable, reason.Message, "").ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (http.RequestAborted.IsCancellationRequested)
        {
            // Whoever asked has gone.
        }
        catch (Exception fault) when (!http.Response.HasStarted && fault is not OutOfMemoryException)
        {
            var number = RandomNumberGenerator.GetHexString(6, lowercase: true);
            await Console.Error.WriteLineAsync($"headroom: fault {number}: {fault}").ConfigureAwait(false);
            await http.Refuse(StatusCodes.Status500InternalServerError, $"This is a fault of headroom itself, not of the job ({fault.GetType().Name}).", $"Nothing was changed. Where the desk was started it says more, under {number}.").ConfigureAwait(false);
        }
    }
}
