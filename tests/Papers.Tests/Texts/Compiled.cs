using System.Buffers.Binary;
using System.Reflection;
using System.Reflection.Emit;
using Calx.Papers.Documents;
using Calx.Practicals.Texts;

namespace Calx.Papers.Tests.Texts;

/// <summary>What the compiled libraries say and call: read from its instructions, so that no way of writing it in C# is missed.</summary>
internal static class Compiled
{
    private const BindingFlags Everything =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>A library by the name of its project.</summary>
    public static Assembly Library(string name) => name == TextTopic.Engine ? typeof(EngineLanguage).Assembly : typeof(Paper).Assembly;

    /// <summary>Types of a library, those that the compiler made too.</summary>
    public static IReadOnlyList<Type> Types(string library) => Library(library).GetTypes();

    /// <summary>Tokens of all methods of a library that are called in it, or handed on to be called.</summary>
    public static HashSet<int> Called(string library) =>
        [.. Types(library).SelectMany(t => ((OpCode[])[OpCodes.Call, OpCodes.Callvirt, OpCodes.Ldftn]).SelectMany(code => Operands(t, code)))];

    /// <summary>Texts that stand in the code of a type.</summary>
    public static IEnumerable<string> Literals(Type type) => Operands(type, OpCodes.Ldstr)
        .Where(o => o >>> 24 == 0x70).Select(o => Said(type.Module, o)).OfType<string>();

    /// <summary>Four bytes behind what may be the instruction: a token, or by chance something else.</summary>
    private static IEnumerable<int> Operands(Type type, OpCode instruction)
    {
        // A record's own way of printing itself names its members; nobody reads that on a paper.
        IEnumerable<MethodBase> methods = [.. type.GetMethods(Everything).Where(m => m.Name != "PrintMembers"), .. type.GetConstructors(Everything)];
        foreach (byte[] code in methods.Select(m => m.GetMethodBody()?.GetILAsByteArray()).OfType<byte[]>())
        {
            for (int at = 0; at + 4 < code.Length; at++)
            {
                if (code[at] == (instruction.Value & 0xFF) && (instruction.Size == 1 || (at > 0 && code[at - 1] == ((instruction.Value >> 8) & 0xFF))))
                {
                    yield return BinaryPrimitives.ReadInt32LittleEndian(code.AsSpan(at + 1));
                }
            }
        }
    }

    private static string? Said(Module module, int token)
    {
        try
        {
            return module.ResolveString(token);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
