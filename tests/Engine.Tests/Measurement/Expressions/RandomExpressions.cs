using Calx.Measurement.Expressions;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Expressions;

/// <summary>Random trees for property tests.</summary>
internal static class RandomExpressions
{
    public static readonly string[] Names = ["a", "b", "c"];

    private static readonly Gen<Expression> Leaf = Gen.OneOf<Expression>(
        Gen.Int[0, 2].Select(i => (Expression)new NameTerm(Names[i])),
        Gen.Int[0, 9].Select(number => (Expression)new NumberTerm(number)),
        Gen.Double[1e-6, 1e6].Select(number => (Expression)new NumberTerm(number)),
        Gen.Bool.Select(hydrated => (Expression)new MolarMassTerm(hydrated ? "Mg(OH)2" : "MgO")));

    /// <summary>Any tree of the grammar, most without a value at most points.</summary>
    public static Gen<Expression> Any { get; } = Tree(5);

    /// <summary>Trees whose every part is positive, smooth and of moderate size at inputs between 0.5 and 2, so that
    /// rounding stays near 1e-15 and derivatives exist.</summary>
    public static Gen<Expression> Tame { get; } = TameTree(4);

    /// <summary>Molar masses that the tests supply: a number for each text.</summary>
    public static double MolarMass(string formula) => formula.Length * 10.5;

    private static Gen<Expression> Tree(int depth)
    {
        if (depth == 0)
        {
            return Leaf;
        }

        Gen<Expression> below = Tree(depth - 1);
        return Gen.OneOf<Expression>(
            Leaf,
            below.Select(operand => (Expression)new Negation(operand)),
            Gen.Select(Gen.Enum<Operator>(), below, below, (op, left, right) => (Expression)new BinaryOperation(op, left, right)),
            Gen.Select(Gen.Enum<Operator>(), below, below, (op, left, right) => (Expression)new BinaryOperation(op, left, right)),
            Gen.Select(Gen.Enum<Function>(), below.Array[3], (function, parts) => (Expression)new FunctionCall(
                function, function is Function.Min or Function.Max ? parts : parts[..1])));
    }

    private static Gen<Expression> TameTree(int depth)
    {
        Gen<Expression> leaf = Gen.OneOf<Expression>(
            Gen.Int[0, 2].Select(i => (Expression)new NameTerm(Names[i])),
            Gen.Int[1, 3].Select(number => (Expression)new NumberTerm(number)));
        if (depth == 0)
        {
            return leaf;
        }

        Gen<Expression> below = TameTree(depth - 1);
        var one = new NumberTerm(1);
        return Gen.OneOf<Expression>(
            leaf,
            Gen.Select(below, below, (left, right) => (Expression)new BinaryOperation(Operator.Add, left, right)),
            Gen.Select(below, below, (left, right) => (Expression)new BinaryOperation(Operator.Divide, left, right)),
            Gen.Select(below, leaf, (left, right) => (Expression)new BinaryOperation(Operator.Multiply, left, right)),
            Gen.Select(below, Gen.Int[2, 3], (left, power) => (Expression)new FunctionCall(Function.Sqrt, [
                new BinaryOperation(Operator.Power, left, new NumberTerm(power))])),
            below.Select(part => (Expression)new FunctionCall(Function.Ln, [new BinaryOperation(Operator.Add, one, part)])),
            below.Select(part => (Expression)new FunctionCall(Function.Exp, [
                new Negation(new BinaryOperation(Operator.Divide, one, new BinaryOperation(Operator.Add, one, part)))])));
    }
}
