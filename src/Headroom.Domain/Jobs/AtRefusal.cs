namespace Headroom.Domain.Jobs;

/// <summary>What a switch does with the ports behind one that does not fit.</summary>
public enum AtRefusal
{
    /// <summary>It goes on to the next port.</summary>
    Skip,

    /// <summary>It powers no further port.</summary>
    Stop,
}
