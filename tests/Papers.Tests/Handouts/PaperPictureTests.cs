using System.Buffers.Binary;
using System.Xml.Linq;
using Calx.Papers.Charts;
using Calx.Papers.Handouts;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Definition;
using static Calx.Papers.Tests.Charts.Drawn;

namespace Calx.Papers.Tests.Handouts;

/// <summary>Drawings and charts as files of their own.</summary>
public sealed class PaperPictureTests
{
    [Fact]
    public void Each_picture_of_the_papers_is_there_once_and_with_one_drawing_all_of_the_practical()
    {
        Assert.Equal(
            ["drawing-heating", "drawing-cooling", "drawing-weighing", "timeline-typical", "ratio-chart", "sample-chart", "dots-chart"],
            Pictures(Enum.GetValues<PaperKind>()).Select(p => p.Id));
        Assert.Equal(["drawing-heating", "drawing-cooling", "drawing-weighing"], Pictures(PaperKind.Student).Select(p => p.Id));
        Assert.Empty(Pictures(PaperKind.Requisition));
    }

    [Fact]
    public void Names_of_files_are_safe() =>
        Assert.All(Shelf.Three.SelectMany(id => Set(id, Enum.GetValues<PaperKind>()).Pictures), p => Assert.Matches("^[a-z0-9-]+$", p.Id));

    /// <summary>Programs for drawing know classes of CSS, but no custom properties and no order of painting: each colour stands there by its
    /// value, and no letter is painted over by its own edge.</summary>
    [Fact]
    public void An_SVG_file_needs_nothing_else()
    {
        foreach (PaperPicture picture in Pictures(Enum.GetValues<PaperKind>()))
        {
            string text = System.Text.Encoding.UTF8.GetString(picture.Svg());
            XElement file = XElement.Parse(text);
            Assert.Equal(Svg + "svg", file.Name);
            Assert.Equal(picture.Title, file.Element(Svg + "title")!.Value);
            Assert.Contains("@font-face{font-family:'Calx Sans';font-weight:400;src:url(data:font/woff2;base64,", text, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"var\(--(?!line\b)", text);
            Assert.DoesNotContain("paint-order", text, StringComparison.Ordinal);
            Assert.Equal($"{picture.WidthInMillimetres}mm", file.Attribute("width")!.Value);
            Assert.DoesNotMatch(@"href|url\((?!data:)|<script|<image", text);
        }
    }

    /// <summary>PNG, third edition: the size stands in IHDR at byte 16, the resolution in the chunk pHYs in dots a metre; 300 dots an
    /// inch are 11,811 a metre.</summary>
    [Fact]
    public void A_PNG_file_has_300_dots_an_inch_of_its_width_and_says_so()
    {
        foreach (PaperPicture picture in Pictures(PaperKind.Student, PaperKind.Report, PaperKind.Display))
        {
            byte[] png = picture.Png();
            Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], png[..4]);
            Assert.InRange(BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(16)) - (picture.WidthInMillimetres / 25.4 * 300), -2, 2);
            Assert.Equal("pHYs"u8.ToArray(), png[37..41]);
            Assert.Equal(11811u, BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(41)));
            Assert.Equal(11811u, BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(45)));
            Assert.Equal(1, png[49]);
            Assert.Equal("IEND"u8.ToArray(), png[^8..^4]);
        }
    }

    /// <summary>zlib.crc32 of Python 3 over the chunk's name and its nine bytes: 11,811 twice and the unit 1.</summary>
    [Fact]
    public void The_sum_of_the_chunk_is_that_of_zlib() =>
        Assert.Equal(0x78A53F76u, BinaryPrimitives.ReadUInt32BigEndian(Pictures(PaperKind.Student)[0].Png().AsSpan(50)));

    /// <summary>In greyscale (Rec. 601 luma, as copiers do) a mark stands out from the paper, and so do the letters.</summary>
    [Fact]
    public void In_grey_every_line_and_letter_is_dark_enough_to_be_seen()
    {
        foreach (string role in (string[])["ink", "quiet", "mark", "odd", "theory"])
        {
            string colour = ChartStyle.Light.Split(';').Select(c => c.Split(':')).Single(c => c[0] == $"--{role}")[1];
            int[] rgb = [.. Enumerable.Range(0, 3).Select(i => Convert.ToInt32(colour.Substring(1 + (2 * i), 2), 16))];
            Assert.True((0.299 * rgb[0]) + (0.587 * rgb[1]) + (0.114 * rgb[2]) < 128, role);
        }
    }

    internal static PaperSet Set(string id, params PaperKind[] kinds) => PaperSet.Of(
        StudentSheetTests.Setting(StudentSheetTests.Plans[id]), kinds, Enum.GetValues<SupportLevel>(), null, id == "magnesium-oxide" ? new ClassOutcome(Analysed.Twelve) : null);

    private static IReadOnlyList<PaperPicture> Pictures(params PaperKind[] kinds) => Set("magnesium-oxide", kinds).Pictures;
}
