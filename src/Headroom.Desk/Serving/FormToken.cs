using Microsoft.AspNetCore.Http;

namespace Headroom.Desk.Serving;

/// <summary>What a form of the desk carries, so that none from elsewhere is taken for one.</summary>
internal static class FormToken
{
    /// <summary>Under what a request keeps it.</summary>
    public const string Key = "headroom-form-token";

    /// <summary>The name of its field.</summary>
    public const string Field = "__RequestVerificationToken";

    /// <summary>The token of a request; empty when it has none.</summary>
    public static string Of(HttpContext? http) => http?.Items[Key] as string ?? "";
}
