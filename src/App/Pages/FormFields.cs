using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;

namespace Calx.App.Pages;

/// <summary>Reads a form's fields as text without spaces round it; a field that was not sent is empty.</summary>
public sealed class FormFields(IFormCollection form)
{
    private const int OtherFields = 64 * 1024;

    /// <summary>Reads the form of a request.</summary>
    /// <param name="context">The request.</param>
    /// <param name="longestField">Most characters of one field, where a form may hold more than forms usually do; else null.</param>
    /// <exception cref="BadHttpRequestException">The request has no form, or none that can be read.</exception>
    public static async Task<FormFields> Of(HttpContext context, int? longestField = null)
    {
        if (longestField is int longest && context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
        {
            // Three bytes for a character as forms are sent, and the other fields.
            limit.MaxRequestBodySize = (3L * longest) + OtherFields;
            context.Features.Set<IFormFeature>(new FormFeature(context.Request, new FormOptions { ValueLengthLimit = longest, ValueCountLimit = 200 }));
        }

        if (!context.Request.HasFormContentType)
        {
            throw new BadHttpRequestException("A form is expected.");
        }

        try
        {
            return new FormFields(await context.Request.ReadFormAsync(context.RequestAborted));
        }
        catch (Exception broken) when (broken is NotSupportedException || (broken is IOException && broken is not BadHttpRequestException))
        {
            // It says that it is written in UTF-7, or its last part has no end.
            throw new BadHttpRequestException("A form is expected.", broken);
        }
    }

    /// <summary>The field, or empty. A NUL, which no keyboard types and no database keeps, is left out.</summary>
    public string this[string name] => form.TryGetValue(name, out Microsoft.Extensions.Primitives.StringValues values) && values.Count > 0
        ? (values[0] ?? "").Replace("\0", "", StringComparison.Ordinal).Trim() : "";

    /// <summary>Whether a field was sent, be it empty.</summary>
    public bool Has(string name) => form.ContainsKey(name);

    /// <summary>Every value of a field that may be there several times.</summary>
    public IReadOnlyList<string> All(string name) => form.TryGetValue(name, out Microsoft.Extensions.Primitives.StringValues values)
        ? [.. values.Select(v => (v ?? "").Trim()).Where(v => v.Length > 0)] : [];

    /// <summary>The field, cut to a length that is kept.</summary>
    public string Short(string name, int longest) => this[name] is { } text && text.Length > longest ? text[..longest] : this[name];

    /// <summary>Whether a box is ticked.</summary>
    public bool IsTicked(string name) => this[name].Length > 0;
}
