using Bellowsmith.Kits.Figures;
using Bellowsmith.Papers.Drawing;
using SkiaSharp;

namespace Bellowsmith.Papers;

/// <summary>Writes one drawing to scale as PDF: vectors, text that can be selected, no date, the same bytes for the same drawing.</summary>
public static class DrawingPdf
{
    /// <param name="title">Of the document.</param>
    /// <param name="draw">The part drawn with letters of so many mm of the part.</param>
    /// <param name="paper">One page of it.</param>
    public static byte[] Write(string title, Func<double, SheetDrawing> draw, Paper paper)
    {
        using MemoryStream bytes = new();
        using (SKDocument document = SKDocument.CreatePdf(bytes, Metadata(title)))
        using (Letters letters = new(tabular: false))
        {
            using SKCanvas canvas = document.BeginPage(paper.Width, paper.Height);
            new SectionView(new CanvasPen(canvas, letters), new SKRect(
                PageEdges.Margin, PageEdges.Margin, paper.Width - PageEdges.Margin, paper.Height - PageEdges.Margin)).Draw(draw);
            document.EndPage();
            document.Close();
        }

        return bytes.ToArray();
    }

    private static SKDocumentPdfMetadata Metadata(string title) => new()
    {
        Title = title,
        Creator = "Bellowsmith",
        Producer = "Bellowsmith",
        RasterDpi = SKDocumentPdfMetadata.DefaultRasterDpi,
        EncodingQuality = SKDocumentPdfMetadata.DefaultEncodingQuality,
    };
}
