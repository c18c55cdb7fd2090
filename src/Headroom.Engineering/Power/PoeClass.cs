namespace Headroom.Engineering.Power;

/// <summary>What the standard says of one class of a device with a single signature.</summary>
/// <param name="Number">Class, 0 to 8.</param>
/// <param name="SourceWatts">Power that a source keeps for the class [W], as commonly printed.</param>
/// <param name="SourceWattsType3Or4">The same at a source of type 3 or 4 [W]; differs in classes 0, 2 and 3, from memory and unconfirmed.</param>
/// <param name="DeviceWatts">Most power at the device's connector [W].</param>
/// <param name="SourceVoltsMin">Least voltage at the source [V].</param>
/// <param name="DeviceVoltsMin">Least voltage at the device at full class power [V].</param>
/// <param name="ChannelOhms">Loop resistance of the powering circuit that the standard reckons with [Ω].</param>
/// <param name="Pairs">Pairs that carry power, 2 or 4.</param>
/// <param name="LeastEvents">Fewest class events by which a type 3 or 4 source grants the class.</param>
/// <param name="MostEvents">Most class events by which a type 3 or 4 source grants the class.</param>
/// <param name="FirstSignature">Class signature shown in events 1 and 2.</param>
/// <param name="LaterSignature">Class signature shown from event 3 on.</param>
public sealed record PoeClass(
    int Number, double SourceWatts, double SourceWattsType3Or4, double DeviceWatts, double SourceVoltsMin, double DeviceVoltsMin,
    double ChannelOhms, int Pairs, int LeastEvents, int MostEvents, int FirstSignature, int LaterSignature)
{
    /// <summary>Current at full class power and the least source voltage, on all the pairs together [A].</summary>
    public double MostAmperes => SourceWatts / SourceVoltsMin;
}
