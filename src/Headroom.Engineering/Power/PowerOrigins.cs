namespace Headroom.Engineering.Power;

/// <summary>The two bits that say where the power comes from; they mean one thing from a source and another from a device.</summary>
internal static class PowerOrigins
{
    private static readonly PowerOrigin[] OfSource = [PowerOrigin.Unknown, PowerOrigin.Primary, PowerOrigin.Backup, PowerOrigin.Unknown];
    private static readonly PowerOrigin[] OfDevice = [PowerOrigin.Unknown, PowerOrigin.Cable, PowerOrigin.Local, PowerOrigin.CableAndLocal];

    internal static PowerOrigin Read(bool isSource, int code) => (isSource ? OfSource : OfDevice)[code];

    internal static int Code(bool isSource, PowerOrigin origin)
    {
        var code = Array.IndexOf(isSource ? OfSource : OfDevice, origin);
        return code >= 0 ? code : throw new ArgumentOutOfRangeException(
            nameof(origin), origin, $"origin is {origin}; a {(isSource ? "source" : "device")} cannot say that.");
    }
}
