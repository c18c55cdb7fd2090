namespace Headroom.Engineering.Failure;

/// <summary>What one failure takes with it.</summary>
/// <param name="Subject">What fails.</param>
/// <param name="What">What it is, in a word or two.</param>
/// <param name="Dark">Endpoints that lose their power.</param>
/// <param name="CutOff">Endpoints that keep their power and lose the way to the line, or to the others where there is no line.</param>
public sealed record FailureEffect(string Subject, string What, IReadOnlyList<string> Dark, IReadOnlyList<string> CutOff)
{
    /// <summary>All endpoints that are of no use while it lasts.</summary>
    public int Lost => Dark.Count + CutOff.Count;
}
