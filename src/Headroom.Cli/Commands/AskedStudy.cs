using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering;

namespace Headroom.Cli.Commands;

/// <summary>What a command that studies one design was asked, read and found to hold together.</summary>
/// <param name="Job">The job, with the firm's rates where they were given.</param>
/// <param name="Models">The models it was read with.</param>
/// <param name="Request">What is wanted, with the firm's readings.</param>
internal sealed record AskedStudy(Job Job, Catalogue Models, StudyRequest Request);
