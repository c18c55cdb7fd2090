using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Failure;

/// <summary>Works out what fails with what.</summary>
public static class FailureStudy
{
    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <returns>The result; entries are made from it by <see cref="FailureLedger"/>.</returns>
    public static FailureResult Of(BoundDesign bound) => new(bound);
}
