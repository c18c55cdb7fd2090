using System.Runtime.ExceptionServices;
using Headroom.Domain.Catalogues;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary>Fetches the models that a job names while the job itself is being read: two things to wait for become one.</summary>
internal sealed class ModelsAhead
{
    private readonly Thread _thread;
    private Loaded<Catalogue>? _models;
    private ExceptionDispatchInfo? _fault;

    private ModelsAhead(IReadOnlyList<string> catalogues, string text)
    {
        _thread = new Thread(() => Fetch(catalogues, text)) { IsBackground = true };
    }

    /// <summary>What was read of the shipped models and the firm's own; waits for it.</summary>
    public Loaded<Catalogue> Models
    {
        get
        {
            _thread.Join();
            _fault?.Throw();
            return _models!;
        }
    }

    /// <summary>The models, or null when they could not be read; waits for them.</summary>
    public Catalogue? Usable => Models.Ok ? Models.Value : null;

    /// <summary>Begins to fetch.</summary>
    /// <param name="catalogues">The firm's own catalogue files.</param>
    /// <param name="text">The text of the job.</param>
    public static ModelsAhead Start(IReadOnlyList<string> catalogues, string text)
    {
        var ahead = new ModelsAhead(catalogues, text);
        ahead._thread.Start();
        return ahead;
    }

    private void Fetch(IReadOnlyList<string> catalogues, string text)
    {
        try
        {
            JobFile.Prepare(text);
            _models = JobSource.Models(catalogues);
            if (_models.Ok && _models.Value is { } models)
                CatalogueFiles.ReadAhead(models, text);
        }
        catch (Exception fault)
        {
            // Told where the models are asked for, as it would be without a second thread.
            _fault = ExceptionDispatchInfo.Capture(fault);
        }
    }
}
