using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Calx.App.Output;

/// <summary>
/// One JSON document as an answer. It is finished before a character of it is printed, so that a fault found half-way
/// leaves standard output empty.
/// </summary>
internal static class JsonAnswer
{
    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        NewLine = "\n",
        // The document is read by programs or people, never pasted into a page: 'CuSO4·5H2O' stays as it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Lets <paramref name="write"/> make the document, then prints it.</summary>
    public static void Print(TextWriter output, Action<Utf8JsonWriter> write)
    {
        var bytes = new ArrayBufferWriter<byte>(4096);
        using (var json = new Utf8JsonWriter(bytes, Layout))
        {
            write(json);
        }

        output.Write(Encoding.UTF8.GetString(bytes.WrittenSpan));
        output.WriteLine();
    }

    /// <summary>A figure to 12 significant digits; null where there is none (the caller writes why).</summary>
    public static void WriteFigure(this Utf8JsonWriter json, string key, double? value)
    {
        json.WritePropertyName(key);
        json.WriteFigureValue(value);
    }

    /// <inheritdoc cref="WriteFigure"/>
    public static void WriteFigureValue(this Utf8JsonWriter json, double? value)
    {
        if (value is double figure && double.IsFinite(figure))
        {
            json.WriteNumberValue(Rounded(figure));
        }
        else
        {
            json.WriteNullValue();
        }
    }

    /// <summary>An interval as <c>[low, high]</c>.</summary>
    public static void WriteInterval(this Utf8JsonWriter json, string key, double low, double high)
    {
        json.WriteStartArray(key);
        json.WriteFigureValue(low);
        json.WriteFigureValue(high);
        json.WriteEndArray();
    }

    /// <summary>Texts as an array.</summary>
    public static void WriteTexts(this Utf8JsonWriter json, string key, IEnumerable<string> texts)
    {
        json.WriteStartArray(key);
        foreach (string text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    /// <summary>
    /// The same to 12 significant digits: what runs of one computation on two platforms agree to, and more than any
    /// measurement here. The shortest text that reads back as the result has no more digits.
    /// </summary>
    private static double Rounded(double value)
    {
        string text = value.ToString("G12", CultureInfo.InvariantCulture);
        double rounded = double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
        return rounded == 0 ? 0 : rounded;   // never -0
    }
}
