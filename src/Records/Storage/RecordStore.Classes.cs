using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>Classes and their members.</summary>
public sealed partial class RecordStore
{
    private const string NoSuchClass = "This class is not kept here, or no longer.";

    /// <summary>Adds a class. Refused where the year has one of that name, or the id is taken.</summary>
    /// <param name="added">The class.</param>
    /// <param name="by">Who adds it.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ChangeResult> AddClass(SchoolClass added, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(added);
        return Change(
            by,
            "class-added",
            $"class {added.Id}",
            async (session, audit) =>
            {
                if (await ClassIn(session, added.Id, cancel) is not null)
                {
                    return session.Refuse("Another class has this id already.");
                }

                if (await NameTaken(session, added, cancel) is string reason)
                {
                    return session.Refuse(reason);
                }

                (string Name, object? Value)[] values = RecordRows.Of(added);
                await session.Execute(RecordRows.Insert("class", values), cancel, values);
                session.Tell(null, RecordChange.Classes);
                return audit.Added(RecordJson.Of(added));
            },
            cancel);
    }

    /// <summary>Gives a class another name.</summary>
    /// <param name="classId">The class.</param>
    /// <param name="name">The new name.</param>
    /// <param name="by">Who changes it.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="ArgumentException">The name is blank or longer than <see cref="SchoolClass.LongestName"/>.</exception>
    public Task<ChangeResult> RenameClass(RecordId classId, string name, string by, CancellationToken cancel = default)
    {
        KeptText.Needed(name, SchoolClass.LongestName, nameof(name));
        return Change(
            by,
            "class-renamed",
            $"class {classId}",
            async (session, audit) =>
            {
                if (await ClassIn(session, classId, cancel) is not SchoolClass was)
                {
                    return session.Refuse(NoSuchClass);
                }

                var renamed = new SchoolClass(was.Id, was.Year, name, was.NamesForgotten);
                if (await NameTaken(session, renamed, cancel) is string reason)
                {
                    return session.Refuse(reason);
                }

                (string Name, object? Value)[] values = RecordRows.Of(renamed);
                await session.Execute(RecordRows.Update("class", values), cancel, values);
                session.Tell(null, RecordChange.Classes);
                return audit.Changed(RecordJson.Of(was), RecordJson.Of(renamed));
            },
            cancel);
    }

    /// <summary>All classes, the latest year first, then by name.</summary>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<SchoolClass>> Classes(CancellationToken cancel = default) =>
    [
        .. (await Read($"SELECT {RecordRows.Class} FROM class WHERE school = @school", RecordRows.ClassOf, cancel))
            .OrderByDescending(c => c.Year, StringComparer.Ordinal).ThenBy(c => c.Name, StringComparer.Ordinal),
    ];

    /// <summary>A class, or null where there is none of that id.</summary>
    /// <param name="classId">Its id.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<SchoolClass?> FindClass(RecordId classId, CancellationToken cancel = default) => database.Read(s => ClassIn(s, classId, cancel), cancel);

    /// <summary>A class's members by number.</summary>
    /// <param name="classId">The class.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<Member>> Members(RecordId classId, CancellationToken cancel = default) => await Read(
        $"SELECT {RecordRows.Member} FROM member WHERE school = @school AND class_id = @class ORDER BY number", RecordRows.MemberOf, cancel, ("class", classId.ToString()));

    /// <summary>Adds a member, or gives the one of that number another name. Refused where the class is not there or its names were
    /// forgotten.</summary>
    /// <param name="member">The member.</param>
    /// <param name="by">Who changes it.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ChangeResult> PutMember(Member member, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(member);
        return Change(by, "member-put", FormattableString.Invariant($"member {member.ClassId}/{member.Number}"), (s, a) => Put(s, a, member, cancel), cancel);
    }

    private static async Task<ChangeResult> Put(Session session, AuditParts audit, Member member, CancellationToken cancel)
    {
        (string Name, object? Value)[] values = RecordRows.Of(member);
        if (await ClassIn(session, member.ClassId, cancel) is not SchoolClass itsClass)
        {
            return session.Refuse(NoSuchClass);
        }

        if (itsClass.NamesForgotten && member.Name.Length > 0)
        {
            return session.Refuse("This class's names were forgotten: its members are numbers now. Add a new class to use names again.");
        }

        Member? was = await session.Find(
            $"SELECT {RecordRows.Member} FROM member WHERE school = @school AND class_id = @class_id AND number = @number", RecordRows.MemberOf, cancel, values);
        if (was == member)
        {
            return session.Unchanged();
        }

        string sql = was is null
            ? RecordRows.Insert("member", values)
            : "UPDATE member SET name = @name WHERE school = @school AND class_id = @class_id AND number = @number";
        await session.Execute(sql, cancel, values);
        session.Tell(null, RecordChange.Classes);
        return was is null ? audit.Added(RecordJson.Of(member)) : audit.Changed(RecordJson.Of(was), RecordJson.Of(member));
    }

    private static Task<SchoolClass?> ClassIn(Session session, RecordId classId, CancellationToken cancel) => session.Find(
        $"SELECT {RecordRows.Class} FROM class WHERE school = @school AND id = @id", RecordRows.ClassOf, cancel, ("id", classId.ToString()));

    private static async Task<string?> NameTaken(Session session, SchoolClass one, CancellationToken cancel) =>
        await session.Any("SELECT 1 FROM class WHERE school = @school AND year = @year AND name = @name AND id <> @id", cancel, RecordRows.Of(one))
            ? $"There is a class {one.Name} in {one.Year} already."
            : null;
}
