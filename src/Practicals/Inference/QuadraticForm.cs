namespace Calx.Practicals.Inference;

/// <summary>Vectors against a covariance matrix kept row by row.</summary>
internal static class QuadraticForm
{
    /// <summary>vectorᵀ · matrix · vector: the variance of the combination that <paramref name="vector"/> weighs.</summary>
    public static double Of(ReadOnlySpan<double> matrix, ReadOnlySpan<double> vector)
    {
        Span<double> product = stackalloc double[vector.Length];
        return Of(matrix, vector, product);
    }

    /// <summary>The same, with matrix · vector kept in <paramref name="product"/>.</summary>
    public static double Of(ReadOnlySpan<double> matrix, ReadOnlySpan<double> vector, Span<double> product)
    {
        double form = 0;
        for (int i = 0; i < vector.Length; i++)
        {
            double sum = 0;
            for (int j = 0; j < vector.Length; j++)
            {
                sum += matrix[i * vector.Length + j] * vector[j];
            }

            product[i] = sum;
            form += sum * vector[i];
        }

        return form;
    }
}
