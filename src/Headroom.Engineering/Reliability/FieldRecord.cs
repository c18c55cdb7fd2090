namespace Headroom.Engineering.Reliability;

/// <summary>What was seen of units in the field.</summary>
/// <param name="Failures">Failures; 0 or more.</param>
/// <param name="Hours">Hours in service of all units together [h]; above 0.</param>
public sealed record FieldRecord(int Failures, double Hours)
{
    /// <summary>Failures an hour [1/h].</summary>
    public double Rate => Failures / Hours;
}
