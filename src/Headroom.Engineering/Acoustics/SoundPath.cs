using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>How sound comes from a source to an ear.</summary>
public sealed record SoundPath
{
    /// <summary>The source.</summary>
    public required SoundSource Source { get; init; }

    /// <summary>In words: <c>in the room</c>, <c>out of cupboard</c>, <c>through back-wall</c>.</summary>
    public required string Way { get; init; }

    /// <summary>What is to be found out before it can be worked out; null when nothing.</summary>
    public string? Question { get; init; }

    /// <summary>Why it is left out, such as another floor; null when it counts.</summary>
    public string? LeftOut { get; init; }

    /// <summary>Where the source is heard from, in the ear's room [m]; null through a wall.</summary>
    public Spot? Spot { get; init; }

    /// <summary>Distance from source to ear [m]; null through a wall.</summary>
    public double? Metres { get; init; }

    /// <summary>Directivity Q by the planes near the source [1].</summary>
    public double Directivity { get; init; } = 2;

    /// <summary>What cabinet and cupboard keep [dB].</summary>
    public double Loss { get; init; }

    /// <summary>Where the loss comes from, in words; empty when there is none.</summary>
    public string LossOrigin { get; init; } = "";

    /// <summary>The edge that stands in the way; null for none.</summary>
    public Screen? Screen { get; init; }

    /// <summary>By how much the way round the edge is longer [m]; negative where it does not quite stand in the way; null for none.</summary>
    public double? PathDifference { get; init; }

    /// <summary>The wall that it goes through; null for none.</summary>
    public Partition? Wall { get; init; }

    /// <summary>Sound reduction of that wall with door and gap [dB]; null for none.</summary>
    public double? WallReduction { get; init; }

    /// <summary>The room the ear is in; null while something is to be found out.</summary>
    public SoundRoom? Room { get; init; }

    /// <summary>Share of the sound power that comes straight, by octave [1/m²]; empty while something is to be found out.</summary>
    public double[] Direct { get; init; } = [];

    /// <summary>Share that the room gives back, by octave [1/m²]; empty likewise.</summary>
    public double[] Returned { get; init; } = [];

    /// <summary>Standard uncertainty of all that comes this way, such as of a cabinet [dB].</summary>
    public double Uncertainty { get; init; }

    /// <summary>Standard uncertainty of what comes straight, such as past an edge [dB].</summary>
    public double DirectUncertainty { get; init; }

    /// <summary>Standard uncertainty of what the room gives back [dB].</summary>
    public double ReturnedUncertainty { get; init; }

    /// <summary>The room on the other side of the wall, where the source is heard first; null without a wall.</summary>
    public SoundRoom? From { get; init; }

    /// <summary>What was assumed on the way.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>True when it can be worked out.</summary>
    public bool Known => Direct.Length > 0;
}
