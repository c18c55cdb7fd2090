using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Readings;

/// <summary>Says for a reading what a discipline expects of it. Each discipline has one; the comparison is made in one place.</summary>
public interface IExpectations
{
    /// <summary>What is expected of a reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>The expectation, or null when the discipline has nothing to say of it.</returns>
    Expectation? Of(Reading reading);
}
