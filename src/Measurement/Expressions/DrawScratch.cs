namespace Calx.Measurement.Expressions;

/// <summary>Shares scratch blocks among instructions: a block is free again after its last reader.</summary>
internal static class DrawScratch
{
    /// <summary>The same instructions with block numbers for targets, and how many blocks they need.</summary>
    public static (DrawInstruction[] Instructions, int Blocks) Allocate(IReadOnlyList<DrawInstruction> instructions)
    {
        int[] lastReader = LastReaders(instructions);
        int[] blockOf = new int[instructions.Count];
        var free = new Stack<int>();
        int blocks = 0;
        var allocated = new DrawInstruction[instructions.Count];
        for (int i = 0; i < allocated.Length; i++)
        {
            DrawInstruction instruction = instructions[i];
            DrawOperand left = Placed(instruction.Left, blockOf);
            DrawOperand right = Placed(instruction.Right, blockOf);
            FreeAfter(i, instruction.Left, lastReader, blockOf, free);
            if (instruction.Right != instruction.Left)
            {
                FreeAfter(i, instruction.Right, lastReader, blockOf, free);
            }

            // An operand's block may be written at once: kernels read each draw before they write it.
            blockOf[i] = free.TryPop(out int block) ? block : blocks++;
            allocated[i] = new DrawInstruction(instruction.Opcode, left, right, blockOf[i]);
        }

        return (allocated, blocks);
    }

    private static int[] LastReaders(IReadOnlyList<DrawInstruction> instructions)
    {
        int[] last = new int[instructions.Count];
        for (int i = 0; i < last.Length; i++)
        {
            foreach (DrawOperand operand in (ReadOnlySpan<DrawOperand>)[instructions[i].Left, instructions[i].Right])
            {
                if (operand.Kind == DrawOperandKind.Scratch)
                {
                    last[operand.Index] = i;
                }
            }
        }

        return last;
    }

    private static DrawOperand Placed(DrawOperand operand, int[] blockOf)
        => operand.Kind == DrawOperandKind.Scratch ? DrawOperand.Scratch(blockOf[operand.Index]) : operand;

    private static void FreeAfter(int reader, DrawOperand operand, int[] lastReader, int[] blockOf, Stack<int> free)
    {
        if (operand.Kind == DrawOperandKind.Scratch && lastReader[operand.Index] == reader)
        {
            free.Push(blockOf[operand.Index]);
        }
    }
}
