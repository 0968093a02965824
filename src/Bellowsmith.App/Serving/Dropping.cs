namespace Bellowsmith.App.Serving;

/// <summary>Takes a folder or files dropped on a page into a folder of their own and says where to look at them.</summary>
internal static class Dropping
{
    private const int MostFiles = 500;
    private const long MostBytes = 64 << 20;

    public static void Map(WebApplication app, Workshop workshop) => app.MapPost("/drop", async (HttpContext context) =>
    {
        if (context.Request.ContentLength is not (> 0 and <= MostBytes)) return Results.Text("More than 64 MB was dropped.", statusCode: StatusCodes.Status413PayloadTooLarge);
        IFormCollection form = await context.Request.ReadFormAsync(context.RequestAborted);
        if (form.Files.Count is 0 or > MostFiles) return Results.Text("Drop between 1 and 500 files.", statusCode: StatusCodes.Status400BadRequest);
        string folder = workshop.NewDrop();
        foreach (IFormFile file in form.Files) await Keep(folder, file, context.RequestAborted);
        return Results.Text($"/dropped/{workshop.DropCount() - 1}");
    }).DisableAntiforgery();

    // A name that would leave the folder is kept by its last part alone.
    private static async Task Keep(string folder, IFormFile file, CancellationToken stop)
    {
        string to = Path.GetFullPath(Path.Combine(folder, file.FileName.TrimStart('/', '\\')));
        if (!to.StartsWith(folder + Path.DirectorySeparatorChar, StringComparison.Ordinal)) to = Path.Combine(folder, Path.GetFileName(file.FileName));
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        await using FileStream stream = File.Create(to);
        await file.CopyToAsync(stream, stop);
    }
}
