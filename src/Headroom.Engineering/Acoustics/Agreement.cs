namespace Headroom.Engineering.Acoustics;

/// <summary>How two figures of one thing stand to each other.</summary>
public enum Agreement
{
    /// <summary>Within twice their joint uncertainty: they are combined.</summary>
    Agree,

    /// <summary>Two to three times: both are kept and shown, a second reading is asked for, the higher one counts.</summary>
    Doubtful,

    /// <summary>Beyond three times: they are not combined; the cause is looked for.</summary>
    Contradict,
}
