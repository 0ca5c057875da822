using System.Diagnostics;

namespace Calx.Measurement.Expressions;

/// <summary>
/// Turns a tree into instructions: numbers are folded, a part that occurs twice is computed once, small whole powers
/// become products, and scratch blocks are used again as soon as nothing needs them.
/// </summary>
internal sealed class DrawCompiler(IReadOnlyList<string> inputs, Func<string, double> molarMass)
{
    private readonly List<DrawInstruction> instructions = [];
    private readonly Dictionary<(DrawOpcode, DrawOperand, DrawOperand), DrawOperand> known = [];

    /// <summary>The instructions, each with a target of its own, in an order in which they can be run.</summary>
    public IReadOnlyList<DrawInstruction> Instructions => instructions;

    /// <summary>Writes the instructions for a formula. Its value is that of the last of them, or the constant that is
    /// handed back: even then the instructions are run, for the faults that they may find, as in (1 / x)^0.</summary>
    public double? Compile(Expression formula)
    {
        DrawOperand root = Of(formula);
        if (root.IsConstant)
        {
            return root.Value;
        }

        if (root != DrawOperand.Scratch(instructions.Count - 1))
        {
            Emit(DrawOpcode.Copy, root, default);
        }

        return null;
    }

    private DrawOperand Of(Expression node) => node switch
    {
        NumberTerm number => DrawOperand.Constant(number.Value),
        MolarMassTerm mass => DrawOperand.Constant(molarMass(mass.Formula)),
        NameTerm name => Column(name.Name),
        Negation negation => Negated(Of(negation.Operand)),
        BinaryOperation operation => Of(operation, Of(operation.Left), Of(operation.Right)),
        FunctionCall call => Of(call, [.. call.Arguments.Select(Of)]),
        _ => throw new UnreachableException(),
    };

    private DrawOperand Column(string name)
    {
        for (int i = 0; i < inputs.Count; i++)
        {
            if (inputs[i] == name)
            {
                return DrawOperand.Column(i);
            }
        }

        throw new ArgumentException($"The formula's name {name} is not among the inputs.", nameof(name));
    }

    private DrawOperand Negated(DrawOperand operand)
        => operand.IsConstant ? DrawOperand.Constant(-operand.Value) : Emit(DrawOpcode.Negate, operand, default);

    private DrawOperand Of(BinaryOperation operation, DrawOperand left, DrawOperand right)
    {
        if (left.IsConstant && right.IsConstant)
        {
            return DrawOperand.Constant(DoubleEvaluation.Of(operation, left.Value, right.Value));
        }

        return operation.Operator switch
        {
            Operator.Add => Emit(DrawOpcode.Add, left, right),
            Operator.Subtract => Emit(DrawOpcode.Subtract, left, right),
            Operator.Multiply => Emit(DrawOpcode.Multiply, left, right),
            Operator.Divide => Emit(DrawOpcode.Divide, left, right),
            Operator.Power when right.IsConstant => PowerOf(left, right.Value),
            Operator.Power => Emit(DrawOpcode.Power, left, right),
            _ => throw new UnreachableException(),
        };
    }

    // The same products as CheckedMath.RawPower, so that blocks and single evaluations agree to the last bit.
    private DrawOperand PowerOf(DrawOperand number, double exponent)
    {
        switch (exponent)
        {
            case 0:
                return DrawOperand.Constant(1);
            case 1:
                return number;
            case 0.5:
                return Emit(DrawOpcode.Sqrt, number, default);
            case -1:
                return Emit(DrawOpcode.Divide, DrawOperand.Constant(1), number);
        }

        DrawOperand square = exponent is 2 or 3 or 4 or -2 ? Emit(DrawOpcode.Multiply, number, number) : default;
        return exponent switch
        {
            2 => square,
            3 => Emit(DrawOpcode.Multiply, square, number),
            4 => Emit(DrawOpcode.Multiply, square, square),
            -2 => Emit(DrawOpcode.Divide, DrawOperand.Constant(1), square),
            _ => Emit(DrawOpcode.Power, number, DrawOperand.Constant(exponent)),
        };
    }

    private DrawOperand Of(FunctionCall call, DrawOperand[] arguments)
    {
        if (Array.TrueForAll(arguments, argument => argument.IsConstant))
        {
            return DrawOperand.Constant(
                DoubleEvaluation.Of(call, Array.ConvertAll(arguments, argument => argument.Value)));
        }

        return call.Function switch
        {
            Function.Ln => Emit(DrawOpcode.Ln, arguments[0], default),
            Function.Log10 => Emit(DrawOpcode.Log10, arguments[0], default),
            Function.Exp => Emit(DrawOpcode.Exp, arguments[0], default),
            Function.Sqrt => Emit(DrawOpcode.Sqrt, arguments[0], default),
            Function.Abs => Emit(DrawOpcode.Abs, arguments[0], default),
            Function.Min => arguments.Aggregate((left, right) => Extreme(DrawOpcode.Min, left, right)),
            Function.Max => arguments.Aggregate((left, right) => Extreme(DrawOpcode.Max, left, right)),
            _ => throw new UnreachableException(),
        };
    }

    // Of several arguments the first few may be numbers: kernels take no two constants.
    private DrawOperand Extreme(DrawOpcode opcode, DrawOperand left, DrawOperand right)
    {
        if (!left.IsConstant || !right.IsConstant)
        {
            return Emit(opcode, left, right);
        }

        return DrawOperand.Constant(
            opcode == DrawOpcode.Min ? Math.Min(left.Value, right.Value) : Math.Max(left.Value, right.Value));
    }

    private DrawOperand Emit(DrawOpcode opcode, DrawOperand left, DrawOperand right)
    {
        if (opcode is DrawOpcode.Add or DrawOpcode.Multiply && ComesAfter(left, right))
        {
            (left, right) = (right, left);
        }

        if (!known.TryGetValue((opcode, left, right), out DrawOperand target))
        {
            target = DrawOperand.Scratch(instructions.Count);
            instructions.Add(new DrawInstruction(opcode, left, right, target.Index));
            known.Add((opcode, left, right), target);
        }

        return target;
    }

    // One order for the operands of a sum or product, so that a + b and b + a are found to be the same.
    private static bool ComesAfter(DrawOperand left, DrawOperand right)
        => (left.Kind, left.Index).CompareTo((right.Kind, right.Index)) > 0;
}
