using Bellowsmith.Kits.Answers;
using Bellowsmith.Papers.Drawing;
using SkiaSharp;

namespace Bellowsmith.Papers;

/// <summary>Writes a sheet as PDF: vectors, text that can be selected, the same bytes for the same sheet.</summary>
public static class SheetPdf
{
    public static byte[] Write(Sheet sheet, Paper paper)
    {
        using MemoryStream bytes = new();
        using (SKDocument document = SKDocument.CreatePdf(bytes, Metadata(sheet)))
        using (Letters letters = new(tabular: false))
        {
            foreach (StrutAnswers strut in sheet.Struts)
            {
                using SKCanvas canvas = document.BeginPage(paper.Width, paper.Height);
                new StrutPage(new CanvasPen(canvas, letters), sheet, strut, paper).Draw();
                document.EndPage();
            }

            foreach (CornerAnswers corner in sheet.Corners)
            {
                using SKCanvas canvas = document.BeginPage(paper.Width, paper.Height);
                new CornerPage(new CanvasPen(canvas, letters), sheet, corner, paper).Draw();
                document.EndPage();
            }

            document.Close();
        }

        return bytes.ToArray();
    }

    private static SKDocumentPdfMetadata Metadata(Sheet sheet) => new()
    {
        Title = $"{sheet.Kit.Name}: {string.Join(" and ", sheet.Struts.Select(s => Names.Of(s.Case.End)))}",
        Creator = $"Bellowsmith {sheet.Version}",
        Producer = "Bellowsmith",
        Creation = sheet.Date.UtcDateTime,
        Modified = sheet.Date.UtcDateTime,
        RasterDpi = SKDocumentPdfMetadata.DefaultRasterDpi,
        EncodingQuality = SKDocumentPdfMetadata.DefaultEncodingQuality,
    };
}
