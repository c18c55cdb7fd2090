using Headroom.Domain.Ledgers;

namespace Headroom.Documents.Drawings.Ports;

/// <summary>One port on the face of a switch.</summary>
/// <param name="Number">The number printed on it.</param>
/// <param name="On">What is patched to it; empty for nothing.</param>
/// <param name="Watts">What it gives in an ordinary hour [W]; null when it gives nothing or it is not known.</param>
/// <param name="Powered">True when something on it takes its power there.</param>
/// <param name="Verdict">The worst of its entries in the ledger; null when there is none.</param>
internal sealed record FacePort(int Number, string On, double? Watts, bool Powered, Verdict? Verdict)
{
    /// <summary>True when it is for modules.</summary>
    public bool Pluggable { get; init; }

    /// <summary>True when it leads to another unit or the line.</summary>
    public bool IsLink { get; init; }
}
