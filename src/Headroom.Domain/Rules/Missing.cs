namespace Headroom.Domain.Rules;

/// <summary>A name that leads nowhere.</summary>
/// <param name="Kind">What it should be the name of: <c>space</c>.</param>
/// <param name="Name">The name as written.</param>
/// <param name="Of">What names it: <c>drop K-01</c>.</param>
/// <param name="Where">Where such names are kept, in words: <c>of the job</c>.</param>
internal readonly record struct Missing(string Kind, string Name, string Of, string Where = "of the job");
