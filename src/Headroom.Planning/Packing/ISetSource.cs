namespace Headroom.Planning.Packing;

/// <summary>Says which set is the next to be looked at, by a cost that no packing of it, nor of any later one, falls below.</summary>
internal interface ISetSource
{
    /// <summary>The families of the problem.</summary>
    FamilyTable Table { get; }

    /// <summary>The next set that is not barred; null when there is none, with a bound that is null when that is proved.</summary>
    (BoughtSet? Set, long? Bound) Next(PackEffort effort);

    /// <summary>Bars a set and all that lies inside it.</summary>
    void BarWithin(BoughtSet set);

    /// <summary>Bars all that holds a set, whatever else it has.</summary>
    void BarHolding(BoughtSet set);

    /// <summary>Bars a set with its extras, and nothing else.</summary>
    void BarExactly(BoughtSet set);
}
