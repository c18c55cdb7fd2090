using System.Reflection;
using System.Security.Cryptography;
using Headroom.Documents.Papers;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Headroom.Desk.Serving;

/// <summary>Style sheet, script and letters, from inside the program; each under an address that changes with it.</summary>
internal static class OwnFiles
{
    /// <summary>The folder of their addresses.</summary>
    public const string Path = "/own";

    private static readonly Dictionary<string, (byte[] Bytes, string Type, string Mark)> Files = Read();

    /// <summary>The address of a file.</summary>
    public static string Address(string name) => $"{Path}/{name}?{Files[name].Mark}";

    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        // Browsers ask for it whatever the page says; there is none.
        app.MapGet("/favicon.ico", (RequestDelegate)(http =>
        {
            http.Response.StatusCode = StatusCodes.Status204NoContent;
            return Task.CompletedTask;
        }));
        app.MapGet(Path + "/{name}", (RequestDelegate)Send);
    }

    private static async Task Send(HttpContext http)
    {
        if (http.Request.RouteValues["name"] is not string name || !Files.TryGetValue(name, out var file))
        {
            http.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        http.Response.ContentType = file.Type;
        http.Response.ContentLength = file.Bytes.Length;
        http.Response.Headers.CacheControl = "max-age=31536000, immutable";
        await http.Response.Body.WriteAsync(file.Bytes, http.RequestAborted).ConfigureAwait(false);
    }

    private static Dictionary<string, (byte[], string, string)> Read()
    {
        var (own, documents) = (typeof(OwnFiles).Assembly, typeof(PaperInput).Assembly);
        (string Name, byte[] Bytes, string Type)[] files =
        [
            ("sheet.css", Bytes(own, "sheet.css"), "text/css; charset=utf-8"),
            ("desk.js", Bytes(own, "desk.js"), "text/javascript; charset=utf-8"),
            ("move.js", Bytes(own, "move.js"), "text/javascript; charset=utf-8"),
            .. ((string[])["plain", "strong", "slanted", "mono"]).Select(face => ($"{face}.ttf", Bytes(documents, face), "font/ttf")),
        ];
        return files.ToDictionary(file => file.Name, file => (file.Bytes, file.Type, Convert.ToHexStringLower(SHA256.HashData(file.Bytes))[..8]));
    }

    private static byte[] Bytes(Assembly assembly, string name)
    {
        using var stream = assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
