using System.Globalization;

namespace Bellowsmith.Kits;

/// <summary>One thing wrong in what a person gave: where it stands, what was found, what is allowed, how to mend it.</summary>
/// <param name="File">The file's path as the caller would write it.</param>
/// <param name="Where">The field path (<c>struts.front.thread.pitch</c>) or table place (<c>row 12, column force [N]</c>).</param>
/// <param name="Found">What stands there, as written.</param>
/// <param name="Allowed">What may stand there.</param>
/// <param name="Fix">One sentence a person can act on.</param>
public sealed record Fault(string File, string Where, string Found, string Allowed, string Fix)
{
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{File}: {Where}: found {Found}; allowed: {Allowed}. {Fix}");
}
