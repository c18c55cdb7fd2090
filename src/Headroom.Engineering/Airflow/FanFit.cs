namespace Headroom.Engineering.Airflow;

/// <summary>How a fan takes the voltage that is there for it.</summary>
public enum FanFit
{
    /// <summary>Within what its label allows.</summary>
    Fits,

    /// <summary>Less than its rating: it turns more slowly.</summary>
    Slow,

    /// <summary>So little that it may not start: then it draws current and moves nothing.</summary>
    MayNotStart,

    /// <summary>More than its label allows: it burns out; this is a hazard, never an option.</summary>
    Hazard,
}
