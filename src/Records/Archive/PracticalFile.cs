namespace Calx.Records.Archive;

/// <summary>A teacher's own practical in an archive.</summary>
/// <param name="Name">Its name below the archive's folder <c>practicals</c>: <c>chalk.yaml</c>, or <c>earlier/chalk-v1.yaml</c>.</param>
/// <param name="Text">Its text.</param>
public sealed record PracticalFile(string Name, string Text);
