namespace Headroom.Engineering.Money;

/// <summary>How much of a cable is bought, as the study of the cables found it.</summary>
/// <param name="Cable">The name of the model.</param>
/// <param name="Metres">What is laid, waste included [m].</param>
/// <param name="NotKnown">Drops whose length nobody knows, so that they are not in it.</param>
public sealed record LaidCable(string Cable, double Metres, IReadOnlyList<string> NotKnown);
