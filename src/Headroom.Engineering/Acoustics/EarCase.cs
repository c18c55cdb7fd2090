namespace Headroom.Engineering.Acoustics;

/// <summary>What is heard at an ear in one case: a named temperature with an ordinary load, or all at its most.</summary>
/// <param name="Name">The case as people name it; several that come to the same in a row.</param>
/// <param name="Choices">The fan level of each source that counts, in their order.</param>
/// <param name="Loud">What each brings at the highest level that is possible for it.</param>
/// <param name="Low">All equipment at the lowest possible levels [dB(A)]; null when nothing is known.</param>
/// <param name="High">All equipment at the highest possible levels [dB(A)]; null likewise.</param>
public sealed record EarCase(string Name, IReadOnlyList<LevelChoice> Choices, IReadOnlyList<Contribution> Loud, Estimate? Low, Estimate? High)
{
    /// <summary>What would tell the fan levels; null when they are known.</summary>
    public string? Question => Choices.FirstOrDefault(choice => !choice.Known)?.Question;

    /// <summary>What brings most; null when nothing is known.</summary>
    public Contribution? Loudest => Loud.MaxBy(one => one.Level.Value);
}
