namespace Headroom.Engineering.Power;

/// <summary>What class a port grants to a device that asks for one.</summary>
/// <remarks>Source: IEEE 802.3, Tables 145-11 and 145-13, 145.3.8, from memory.</remarks>
public static class ClassAssignment
{
    // Highest class by number of class events, from 1.
    private static readonly int[] HighestByEvents = [3, 4, 4, 6, 8];

    /// <summary>Class granted by a source that sends a number of class events.</summary>
    /// <param name="events">Class events sent, 1 to 5.</param>
    /// <param name="askedClass">Class that the device asks for, 0 to 8.</param>
    /// <returns>Class granted; 0 stays 0 and is reserved as 3.</returns>
    public static int GrantedByEvents(int events, int askedClass)
    {
        Require.Between(1, HighestByEvents.Length, events);
        Require.Between(0, 8, askedClass);
        return Math.Min(HighestByEvents[events - 1], askedClass);
    }

    /// <summary>Class granted by a port of a highest class.</summary>
    /// <param name="highestClass">Highest class that the port has power for, 0 to 8; 0 counts as 3.</param>
    /// <param name="askedClass">Class that the device asks for, 0 to 8.</param>
    /// <returns>Class granted, lower than asked when the device is demoted; null when even one event would grant more than the port has.</returns>
    public static int? Granted(int highestClass, int askedClass)
    {
        Require.Between(0, 8, highestClass);
        // Fewer events grant less. A port of class 5 or 7 must stop early before a device that would take 6 or 8.
        for (var events = HighestByEvents.Length; events > 0; events--)
        {
            var granted = GrantedByEvents(events, askedClass);
            if (Rank(granted) <= Rank(highestClass))
                return granted;
        }
        return null;
    }

    /// <summary>Whether a device got less than it asked for: it must keep to the granted class or not start its load.</summary>
    /// <param name="grantedClass">Class granted, 0 to 8.</param>
    /// <param name="askedClass">Class that the device asks for, 0 to 8.</param>
    public static bool IsDemoted(int grantedClass, int askedClass) => Rank(grantedClass) < Rank(askedClass);

    // Class 0 says nothing of its need and is served as class 3.
    private static int Rank(int cls) => cls == 0 ? 3 : cls;
}
