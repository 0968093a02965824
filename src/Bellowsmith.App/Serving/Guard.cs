using System.Net;

namespace Bellowsmith.App.Serving;

/// <summary>What every answer carries, and which requests get one: only pages of this machine may talk to it.</summary>
internal static class Guard
{
    private const string Policy =
        "default-src 'self'; base-uri 'self'; object-src 'none'; form-action 'self'; frame-ancestors 'none'; "
        + "img-src 'self' data: blob:; font-src 'self'; style-src 'self'; script-src 'self'; connect-src 'self'";

    public static Task Request(HttpContext context, RequestDelegate next)
    {
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        if (IsOurs(context.Request)) return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    }

    // A name that points here from elsewhere, or a page of another site, may not use what listens on this machine.
    private static bool IsOurs(HttpRequest request)
    {
        string host = request.Host.Host.Trim('[', ']');
        if (host != "localhost" && !(IPAddress.TryParse(host, out IPAddress? address) && IPAddress.IsLoopback(address))) return false;
        string? origin = request.Headers.Origin;
        return string.IsNullOrEmpty(origin) || origin == $"{request.Scheme}://{request.Host}";
    }
}
