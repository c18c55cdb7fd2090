using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>A verdict set aside by somebody, with the reason that is kept.</summary>
/// <param name="Entry">The id of the ledger entry.</param>
/// <param name="Because">Why.</param>
/// <param name="By">Who.</param>
/// <param name="On">When.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Overruling(string Entry, string Because, string By, DateOnly On, Place At);
