namespace Headroom.Engineering.Cabling;

/// <summary>How much of one cable is to be laid.</summary>
/// <param name="Cable">The cable's name in the catalogue.</param>
/// <param name="IsFibre">True for fibre, which is cut to order.</param>
/// <param name="Lengths">The pieces to be laid, as surveyed [m].</param>
/// <param name="NotKnown">Drops whose length nobody knows.</param>
/// <param name="Waste">What is bought beyond the measured lengths [1].</param>
/// <param name="WasteOrigin">Where that comes from.</param>
public sealed record CableTotal(string Cable, bool IsFibre, IReadOnlyList<double> Lengths, IReadOnlyList<string> NotKnown, double Waste, string WasteOrigin)
{
    /// <summary>All known lengths with waste [m].</summary>
    public double Metres => Lengths.Sum() * (1 + Waste);

    /// <summary>Boxes to open, no run joined from two remainders.</summary>
    public int Boxes => CableBoxes.Needed(Lengths.Select(metres => metres * (1 + Waste)));
}
