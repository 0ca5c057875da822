namespace Calx.Papers.SheetCheck;

/// <summary>A sheet has more text than is read.</summary>
internal sealed class SheetTooLongException : Exception;
