namespace Headroom.Documents.Drawings.Outages;

/// <summary>What a row of the restart shows.</summary>
internal enum RestartRowKind
{
    /// <summary>A unit that starts.</summary>
    Boot,

    /// <summary>Something that has power and starts.</summary>
    Start,

    /// <summary>Something that gets no power.</summary>
    Dark,

    /// <summary>A service that works again.</summary>
    Service,
}
