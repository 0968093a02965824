using System.Security.Cryptography;

namespace Bellowsmith.Kits;

/// <summary>A file as the bytes that were read or written: what is hashed is what was computed from.</summary>
/// <param name="File">The file's path as the caller would write it.</param>
/// <param name="Bytes">Its content.</param>
public sealed record FileBytes(string File, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>SHA-256 as 64 small hexadecimal digits, worked out when asked for: loading the hash costs a command several ms.</summary>
    public string Sha256() => Convert.ToHexStringLower(SHA256.HashData(Bytes.Span));
}
