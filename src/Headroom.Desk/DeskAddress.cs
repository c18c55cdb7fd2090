using System.Net;

namespace Headroom.Desk;

/// <summary>Addresses under which the desk may be served. It has no passwords yet, so only this machine may reach it.</summary>
public static class DeskAddress
{
    /// <summary>Where it is served unless somebody says otherwise.</summary>
    public const string Usual = "http://127.0.0.1:5480";

    /// <summary>Reads an address.</summary>
    /// <param name="text">The address as typed.</param>
    /// <returns>The address, or why it is refused.</returns>
    public static (Uri? Address, string? Complaint) Read(string text)
    {
        if (!Uri.TryCreate(text, UriKind.Absolute, out var address) || address.Scheme != Uri.UriSchemeHttp || address.AbsolutePath != "/" || address.Query.Length > 0 || address.UserInfo.Length > 0)
            return (null, $"is an address such as {Usual}, not '{text}'");
        return IsThisMachine(address.IdnHost)
            ? (address, null)
            : (null, $"may only be an address of this machine (127.0.0.1, [::1] or localhost), not '{address.Host}': the desk has no passwords, so whoever reached it there could read and change every job");
    }

    /// <summary>Says whether a name is that of this machine, without asking anybody.</summary>
    /// <param name="host">The name or number, without a port.</param>
    internal static bool IsThisMachine(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host.Trim('[', ']'), out var number) && IPAddress.IsLoopback(number));
}
