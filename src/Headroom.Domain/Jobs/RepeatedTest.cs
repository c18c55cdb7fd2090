using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Something that is to be tested again and again.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Every">The time between two tests [s].</param>
public sealed record RepeatedTest(string Name, Given<Seconds> Every);
