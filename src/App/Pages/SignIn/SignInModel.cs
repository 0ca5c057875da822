namespace Calx.App.Pages.SignIn;

/// <summary>What the page to sign in shows.</summary>
/// <param name="To">Where to go then.</param>
/// <param name="Fault">What was wrong, or null.</param>
public sealed record SignInModel(string To, string? Fault);
