namespace Headroom.Engineering.Traffic;

/// <summary>The recommended markings by class of traffic. Made when first asked for.</summary>
public static class Markings
{
    private static readonly Lazy<IReadOnlyList<MarkingClass>> Table = new(() =>
    [
        new("network control", "CS6", 48, "what switches and routers say to each other"),
        new("telephony", "EF", 46, "the voice of calls"),
        new("signalling", "CS5", 40, "what sets calls up"),
        new("multimedia conferencing", "AF41", 34, "meetings with pictures"),
        new("real-time interactive", "CS4", 32, "remote screens"),
        new("multimedia streaming", "AF31", 26, "films, music"),
        new("broadcast video", "CS3", 24, "pictures of cameras"),
        new("low-latency data", "AF21", 18, "tills, card terminals"),
        new("management", "CS2", 16, "looking after equipment"),
        new("high-throughput data", "AF11", 10, "copies to another place"),
        new("standard", "DF", 0, "everything else"),
        new("low priority", "CS1", 8, "backups, updates; by RFC 8622 LE, 1"),
    ]);

    /// <summary>The classes, in the order of the recommendation. Source: RFC 4594, figure 3, from memory; code points RFC 2474, 2597, 3246, 5865.</summary>
    public static IReadOnlyList<MarkingClass> All => Table.Value;

    /// <summary>The class of a name or of a word of the marking.</summary>
    /// <param name="name">Such as <c>telephony</c> or <c>EF</c>.</param>
    /// <returns>The class; null when there is none.</returns>
    public static MarkingClass? Find(string name) => All.FirstOrDefault(one => one.Name == name || one.Word == name);

    /// <summary>The code point of an assured class.</summary>
    /// <param name="service">Class, 1 to 4.</param>
    /// <param name="drop">Drop precedence, 1 to 3.</param>
    /// <returns>The code point, 8 · class + 2 · drop.</returns>
    /// <remarks>Source: RFC 2597, section 6, from memory.</remarks>
    public static int Assured(int service, int drop)
    {
        Require.Between(1, 4, service);
        Require.Between(1, 3, drop);
        return 8 * service + 2 * drop;
    }

    /// <summary>Where the priority of a tagged frame stands among the eight, 0 being served last.</summary>
    /// <param name="priority">The priority of the tag, 0 to 7.</param>
    /// <returns>The rank: 1 ranks below 0.</returns>
    /// <remarks>Source: IEEE 802.1Q, annex I, from memory.</remarks>
    public static int RankOfPriority(int priority)
    {
        Require.Between(0, 7, priority);
        return priority switch { 0 => 1, 1 => 0, _ => priority };
    }

    /// <summary>The user priority on Wi-Fi.</summary>
    /// <param name="dscp">The code point, 0 to 63.</param>
    /// <param name="byTable">True by the table of RFC 8325, false by the upper three bits.</param>
    /// <returns>0 to 7; 6 and 7 are the voice queue, 4 and 5 that of video.</returns>
    /// <remarks>Source: RFC 8325, section 4, from memory.</remarks>
    public static int UserPriority(int dscp, bool byTable)
    {
        Require.Between(0, 63, dscp);
        return !byTable ? dscp >> 3 : dscp switch
        {
            46 or 44 => 6,
            40 or 34 or 36 or 38 or 32 or 26 or 28 or 30 or 24 => dscp == 40 ? 5 : 4,
            18 or 20 or 22 => 3,
            8 or 1 => 1,
            _ => 0,
        };
    }
}
