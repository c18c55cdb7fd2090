namespace Headroom.Engineering.Acceptance;

/// <summary>How a drop of the schedule stands after the test. Every drop stands in one of the three.</summary>
public enum DropStanding
{
    /// <summary>Passed the agreed limit under its own label.</summary>
    Accepted,

    /// <summary>Passed by less than the tester can tell: accepted only by agreement.</summary>
    Marginal,

    /// <summary>Something is to be done or answered first.</summary>
    Open,
}
