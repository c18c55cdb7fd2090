namespace Headroom.Engineering.Acceptance;

/// <summary>Why a drop is open.</summary>
public enum OpenReason
{
    /// <summary>It is not.</summary>
    None,

    /// <summary>There is no record under its label.</summary>
    Missing,

    /// <summary>Its last record is a fail.</summary>
    Failed,

    /// <summary>It was tested against another limit than agreed.</summary>
    WrongLimit,

    /// <summary>A permanent link was agreed, and it was tested as a channel, whose limit is wider.</summary>
    ChannelForLink,

    /// <summary>It is longer than the standard allows, though it passed.</summary>
    TooLong,

    /// <summary>Another label has the same length and margin: one cable was probably tested twice.</summary>
    Twin,
}
