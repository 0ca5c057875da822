using System.Diagnostics.CodeAnalysis;

namespace Calx.Measurement.Numbers;

/// <summary>What came of reading a text that a person wrote: the value, or the fault. Never both, never neither.</summary>
/// <typeparam name="T">What the text describes.</typeparam>
public sealed class Parsed<T>
    where T : class
{
    private readonly T? value;

    private Parsed(T? value, TextFault? fault)
    {
        this.value = value;
        Fault = fault;
    }

    /// <summary>Whether the text was understood.</summary>
    [MemberNotNullWhen(false, nameof(Fault))]
    public bool Succeeded => Fault is null;

    /// <summary>The fault, or null where the text was understood.</summary>
    public TextFault? Fault { get; }

    /// <summary>The value read.</summary>
    /// <exception cref="InvalidOperationException">The text was not understood: ask <see cref="Succeeded"/> first.</exception>
    public T Value => value ?? throw new InvalidOperationException($"There is no value: {Fault}.");

    /// <summary>A text that was understood.</summary>
    public static implicit operator Parsed<T>(T value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return new Parsed<T>(value, null);
    }

    /// <summary>A text that was not understood.</summary>
    public static implicit operator Parsed<T>(TextFault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return new Parsed<T>(null, fault);
    }
}
