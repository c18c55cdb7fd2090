namespace Headroom.Domain.Findings;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Perhaps a slip: the work goes on, the person is asked.</summary>
    Question,

    /// <summary>Nothing is worked out until it is mended.</summary>
    Error,
}
