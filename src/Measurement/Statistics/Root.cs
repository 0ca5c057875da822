namespace Calx.Measurement.Statistics;

/// <summary>Finds where a continuous function of one number passes through 0.</summary>
internal static class Root
{
    private const int MostSteps = 200;

    /// <summary>
    /// The zero between two points where <paramref name="function"/> has opposite signs, to the last digits of a double:
    /// regula falsi in the Illinois form, with a bisection whenever the bracket has not halved in three steps.
    /// </summary>
    /// <exception cref="ArithmeticException">The signs are equal, or the function is not a number somewhere between.</exception>
    public static double Between(Func<double, double> function, double left, double right)
    {
        double atLeft = function(left);
        double atRight = function(right);
        if (atLeft == 0 || atRight == 0)
        {
            return atLeft == 0 ? left : right;
        }

        if (!(atLeft * atRight < 0 || Math.Sign(atLeft) != Math.Sign(atRight)))
        {
            throw new ArithmeticException($"Root finding: no change of sign between {left} and {right}.");
        }

        return Narrow(function, new Bracket(left, atLeft, right, atRight));
    }

    private static double Narrow(Func<double, double> function, Bracket bracket)
    {
        double widthBefore = bracket.Width;
        for (int step = 1; step <= MostSteps && !bracket.IsClosed; step++)
        {
            bool slow = step % 3 == 0 && bracket.Width > widthBefore / 2;
            double middle = slow ? bracket.Middle : bracket.Crossing;
            double value = function(middle);
            if (double.IsNaN(value))
            {
                throw new ArithmeticException($"Root finding: the function is not a number at {middle} (step {step}).");
            }

            if (value == 0)
            {
                return middle;
            }

            widthBefore = step % 3 == 0 ? bracket.Width : widthBefore;
            bracket.Take(middle, value);
        }

        return bracket.Middle;
    }

    private sealed class Bracket(double left, double atLeft, double right, double atRight)
    {
        private double left = left;
        private double atLeft = atLeft;
        private double right = right;
        private double atRight = atRight;
        private int side;

        public double Width => Math.Abs(right - left);

        public double Middle => left + ((right - left) / 2);

        public bool IsClosed => Width <= 4 * Math.BitIncrement(Math.Max(Math.Abs(left), Math.Abs(right))) * 1.1e-16;

        public double Crossing
        {
            get
            {
                double point = right - (atRight * (right - left) / (atRight - atLeft));
                return point > Math.Min(left, right) && point < Math.Max(left, right) ? point : Middle;
            }
        }

        public void Take(double point, double value)
        {
            if (Math.Sign(value) == Math.Sign(atRight))
            {
                (right, atRight) = (point, value);
                atLeft = side == 1 ? atLeft / 2 : atLeft;
                side = 1;
            }
            else
            {
                (left, atLeft) = (point, value);
                atRight = side == -1 ? atRight / 2 : atRight;
                side = -1;
            }
        }
    }
}
