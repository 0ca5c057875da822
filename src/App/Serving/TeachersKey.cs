using System.Security.Cryptography;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Serving;

/// <summary>
/// Whether a request is the teacher's. On this machine alone nobody else can ask, and no passphrase is needed; once the
/// program is open to the room, the teacher signs in with one.
/// </summary>
public sealed class TeachersKey(RecordStore store, bool openToRoom)
{
    /// <summary>The setting that holds the hash.</summary>
    public const string HashSetting = "teacher.passphrase";

    private volatile string? hash;

    /// <summary>Whether a passphrase is asked for.</summary>
    public bool IsAsked => openToRoom;

    /// <summary>Whether one has been set.</summary>
    public bool IsSet => hash is not null;

    /// <summary>Reads it from the records.</summary>
    public async Task Load(CancellationToken cancellation) => hash = await store.Setting(HashSetting, cancellation);

    /// <summary>Sets it.</summary>
    public async Task Set(string passphrase, CancellationToken cancellation)
    {
        string made = Passphrase.Hash(passphrase);
        await store.PutSetting(HashSetting, made, isSecret: true, Visitor.TeachersDevice, cancellation);
        hash = made;
    }

    /// <summary>Whether a request comes from the teacher.</summary>
    public bool Admits(HttpRequest request, Cookies cookies) => !openToRoom || (hash is not null && cookies.IsTeacher(request, Stamp));

    /// <summary>Whether a passphrase is the right one.</summary>
    public bool Opens(string passphrase) => hash is string kept && Passphrase.Fits(passphrase, kept);

    /// <summary>What a cookie names: the hash of the hash, so that a new passphrase ends what was begun under the old one.</summary>
    public string Stamp => Convert.ToHexStringLower(SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(hash ?? "")))[..16];
}
