namespace Headroom.Cli.Tests.Record;

/// <summary>A folder of sheets for a test.</summary>
internal sealed class RecordFolder : IDisposable
{
    public RecordFolder(params (string Name, string Text)[] files)
    {
        foreach (var (name, text) in files)
            File.WriteAllText(System.IO.Path.Combine(Path, name), text);
    }

    public string Path { get; } = Directory.CreateTempSubdirectory("record").FullName;

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
