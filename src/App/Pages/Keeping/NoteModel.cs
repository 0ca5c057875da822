namespace Calx.App.Pages.Keeping;

/// <summary>What school IT wants to know.</summary>
/// <param name="Folder">The data folder.</param>
/// <param name="IsPostgres">Whether the records are in PostgreSQL.</param>
/// <param name="OpenToRoom">Whether other devices may reach it.</param>
/// <param name="Secure">Whether it speaks HTTPS.</param>
/// <param name="Port">The port.</param>
public sealed record NoteModel(string Folder, bool IsPostgres, bool OpenToRoom, bool Secure, int Port);
