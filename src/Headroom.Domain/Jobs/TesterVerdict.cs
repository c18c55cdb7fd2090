namespace Headroom.Domain.Jobs;

/// <summary>What a cable tester said of a link.</summary>
public enum TesterVerdict
{
    /// <summary>Passed.</summary>
    Pass,

    /// <summary>Passed by less than the tester can tell for certain: the star behind the word.</summary>
    Marginal,

    /// <summary>Failed, with or without a star.</summary>
    Fail,
}
