using Calx.Papers.Charts;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Wordprocessing;
using A = DocumentFormat.OpenXml.Drawing;
using Pic = DocumentFormat.OpenXml.Drawing.Pictures;
using Lines = DocumentFormat.OpenXml.Office2019.Drawing.SVG;
using Wp = DocumentFormat.OpenXml.Drawing.Wordprocessing;

namespace Calx.Papers.Documents.Word;

/// <summary>Pictures in a word processor's file: lines where it can draw them (SVG), and a bitmap for those that cannot.</summary>
internal sealed class WordPictures(MainDocumentPart main)
{
    /// <summary>How a bitmap names the lines that it stands for.</summary>
    private const string SvgExtension = "{96DAC541-7B7A-43D3-8B79-37D633B846F1}";

    /// <summary>Number of the last picture: unique in the document.</summary>
    private uint last;

    /// <summary>A picture of so many mm, with what is to be seen in it for those who cannot.</summary>
    public Drawing Of(PaperBlock.Figure figure, double widthInMillimetres)
    {
        SvgPicture picture = figure.Picture;
        last = (uint)main.ImageParts.Count() + 1;
        string bitmap = Part(ImagePartType.Png, figure.Bitmap(widthInMillimetres));
        string lines = Part(ImagePartType.Svg, System.Text.Encoding.UTF8.GetBytes(picture.Plain(widthInMillimetres)));
        (long across, long high) = (WordLength.Emu(widthInMillimetres), WordLength.Emu(widthInMillimetres * picture.Height / picture.Width));
        var blip = new A.Blip(new A.BlipExtensionList(new A.BlipExtension(new Lines.SVGBlip { Embed = lines }) { Uri = SvgExtension })) { Embed = bitmap };
        return new Drawing(new Wp.Inline(
            new Wp.Extent { Cx = across, Cy = high },
            new Wp.DocProperties { Id = last, Name = $"Picture {last}", Title = picture.Title, Description = picture.Description },
            new A.Graphic(new A.GraphicData(new Pic.Picture(
                new Pic.NonVisualPictureProperties(
                    new Pic.NonVisualDrawingProperties { Id = last, Name = $"Picture {last}", Description = picture.Description },
                    new Pic.NonVisualPictureDrawingProperties()),
                new Pic.BlipFill(blip, new A.Stretch(new A.FillRectangle())),
                new Pic.ShapeProperties(
                    new A.Transform2D(new A.Offset { X = 0, Y = 0 }, new A.Extents { Cx = across, Cy = high }),
                    new A.PresetGeometry(new A.AdjustValueList()) { Preset = A.ShapeTypeValues.Rectangle })))
            { Uri = "http://schemas.openxmlformats.org/drawingml/2006/picture" }))
        { DistanceFromTop = 0, DistanceFromBottom = 0, DistanceFromLeft = 0, DistanceFromRight = 0 });
    }

    private string Part(PartTypeInfo kind, byte[] bytes)
    {
        ImagePart part = main.AddImagePart(kind, WordIds.Next(main));
        part.FeedData(new MemoryStream(bytes));
        return main.GetIdOfPart(part);
    }
}
