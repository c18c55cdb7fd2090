namespace Headroom.Engineering.Differences;

/// <summary>One model to be put in the place of another, wherever a design or its survey has it.</summary>
/// <param name="Model">The model that is there.</param>
/// <param name="Other">The model in its place.</param>
public sealed record ModelSwap(string Model, string Other)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Other} for {Model}";
}
