using Calx.App.Input;
using Calx.App.Live;
using Calx.App.Output;
using Calx.App.Own;
using Calx.App.Serving;
using Calx.Practicals.Clock;

namespace Calx.App.Commands;

/// <summary>Looks up in the records whether the practical was signed for a plan.</summary>
/// <param name="options">Whose records; null where they were named with a fault, which was told.</param>
internal sealed class RecordsLookUp(ServeOptions? options)
{
    /// <summary>Whether it was signed.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="surroundings">Where trouble is told.</param>
    /// <param name="isSigned">The answer; false where there was trouble.</param>
    /// <returns>The exit code.</returns>
    public int IsSigned(PlanSettings plan, Surroundings surroundings, out bool isSigned)
    {
        isSigned = false;
        if (options is null)
        {
            return ExitCode.BadInput;
        }

        if (RecordsChoice.Missing(options, "papers") is string missing)
        {
            if (OwnFolder.In(options.DataFolder).IsThere)
            {
                // A folder with practicals of one's own and no records yet: nobody can have signed.
                return ExitCode.Done;
            }

            surroundings.Error.WriteLine(missing);
            return ExitCode.BadInput;
        }

        bool found = false;
        int code = RecordsChoice.Open(options, "papers", surroundings, async (store, cancellation) =>
        {
            found = await new SafetyGate(store).SignatureFor(plan, cancellation) is not null;
            return ExitCode.Done;
        }).GetAwaiter().GetResult();
        isSigned = found;
        return code;
    }
}
