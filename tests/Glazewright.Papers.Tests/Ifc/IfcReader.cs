using System.Diagnostics;
using System.Text.Json;

namespace Glazewright.Papers.Tests.Ifc;

/// <summary>
/// Building models as another program sees them: web-ifc 0.0.78 (npm, MPL-2.0) under Node parses the file and makes meshes. Its declaration file lists the classes of
/// IFC4 with their attributes, so every instance is also held against the schema: how many attributes, which may be missing, which class a reference must be of, which words an enumeration has.
/// </summary>
internal static class IfcReader
{
    private const string Script = """
        const fs = require('fs'), home = process.argv[1];
        const web = require(home + '/web-ifc-api-node.js');
        const text = fs.readFileSync(home + '/ifc-schema.d.ts', 'utf8');
        const ifc4 = text.slice(text.indexOf('namespace IFC4 {'), text.indexOf('namespace IFC4X3 {'));
        const classes = {}, selects = {}, enums = {};
        for (const m of ifc4.matchAll(/class (\w+) extends (\w+) \{([\s\S]*?)\n    \}/g)) {
            const c = /constructor\((.*)\);/.exec(m[3]);
            classes[m[1]] = { base: m[2], params: c ? c[1].split(/, (?=\w+: )/).filter(x => x).map(x => x.split(/: (.*)/s)) : null };
        }
        for (const m of ifc4.matchAll(/class (Ifc\w+) \{([\s\S]*?)\n    \}/g)) enums[m[1]] = new Set([...m[2].matchAll(/static (\w+)/g)].map(x => x[1]));
        for (const m of ifc4.matchAll(/type (\w+) = (.*);/g)) selects[m[1]] = m[2];
        const upper = {}; for (const n of Object.keys(classes)) upper[n.toUpperCase()] = n;
        const isA = (name, wanted) => { for (let n = name; n; n = classes[n] && classes[n].base) if (n === wanted) return true; return false; };
        const names = type => [...type.matchAll(/\w+/g)].map(x => x[0]).filter(x => x.startsWith('Ifc'));
        const refFits = (name, type) => names(type).some(t => isA(name, t) || (selects[t] && refFits(name, selects[t])));
        const valueFits = (name, type) => names(type).some(t => t === name || (selects[t] && valueFits(name, selects[t])));
        (async () => {
            const api = new web.IfcAPI();
            const said = [], log = console.log;
            console.log = console.warn = console.error = (...a) => said.push(a.join(' '));
            await api.Init();
            api.SetLogLevel(3);
            const answers = [];
            for (const path of process.argv.slice(2)) {
                const model = api.OpenModel(new Uint8Array(fs.readFileSync(path)));
                const ids = api.GetAllLines(model), lines = new Map(), counts = {}, faults = [], guids = [];
                for (let i = 0; i < ids.size(); i++) {
                    const raw = api.GetRawLineData(model, ids.get(i));
                    const name = upper[api.GetNameFromTypeCode(raw.type).toUpperCase()];
                    lines.set(ids.get(i), { name, args: raw.arguments });
                    counts[name] = (counts[name] || 0) + 1;
                }
                const check = (id, where, arg, type) => {
                    if (arg === null || arg === undefined) { if (!/\| null/.test(type)) faults.push(`#${id} ${where} is missing`); return; }
                    if (Array.isArray(arg)) {
                        if (!/\[\]/.test(type) && !/Compound/.test(type)) faults.push(`#${id} ${where} is a list`);
                        if (arg.length === 0) faults.push(`#${id} ${where} is empty`);
                        arg.flat(2).forEach(a => check(id, where, a, type)); return;
                    }
                    if (arg.type === 5) {
                        const to = lines.get(arg.value);
                        if (!to) faults.push(`#${id} ${where} refers to nothing`);
                        else if (!refFits(to.name, type)) faults.push(`#${id} ${where} refers to ${to.name}, wanted ${type}`);
                    } else if (arg.type === 3) {
                        const set = names(type).map(t => enums[t]).find(x => x);
                        const word = String(arg.value);
                        if (set && set.size ? !set.has(word) : !/boolean|Boolean|Logical/.test(type)) faults.push(`#${id} ${where} has no ${word}`);
                    } else if (arg.type === 2) {
                        const given = arg.typecode !== undefined ? api.GetNameFromTypeCode(arg.typecode) : arg.label || arg.name;
                        if (given && !valueFits(upper[String(given).toUpperCase()] || given, type)) faults.push(`#${id} ${where} may not be a ${given}`);
                    } else if (arg.type === 1 && /IfcLabel|IfcIdentifier/.test(type) && [...String(arg.value)].length > 255) faults.push(`#${id} ${where} is too long`);
                };
                for (const [id, line] of lines) {
                    const params = classes[line.name] && classes[line.name].params;
                    if (!params) { faults.push(`#${id} is of no known class`); continue; }
                    if (params.length !== line.args.length) { faults.push(`#${id} ${line.name} has ${line.args.length} attributes, wanted ${params.length}`); continue; }
                    line.args.forEach((a, i) => check(id, line.name + '.' + params[i][0], a, params[i][1]));
                    if (params[0] && params[0][0] === 'GlobalId') guids.push(line.args[0].value);
                }
                const of = (line, attribute) => { const i = classes[line.name].params.findIndex(p => p[0] === attribute); const a = line.args[i]; return a && a.value !== undefined ? a.value : a; };
                const all = name => [...lines].filter(([, l]) => isA(l.name, name));
                const contained = {}; all('IfcRelContainedInSpatialStructure').forEach(([, l]) => of(l, 'RelatedElements').forEach(r => contained[r.value] = (contained[r.value] || 0) + 1));
                const typed = {}; all('IfcRelDefinesByType').forEach(([, l]) => of(l, 'RelatedObjects').forEach(r => typed[r.value] = (typed[r.value] || 0) + 1));
                const made = {}; all('IfcRelAssociatesMaterial').forEach(([, l]) => of(l, 'RelatedObjects').forEach(r => made[r.value] = (made[r.value] || 0) + 1));
                const sheets = {};
                all('IfcRelDefinesByProperties').forEach(([, l]) => {
                    const set = lines.get(of(l, 'RelatingPropertyDefinition'));
                    const items = of(set, set.name === 'IfcPropertySet' ? 'HasProperties' : 'Quantities').map(r => lines.get(r.value));
                    for (const r of of(l, 'RelatedObjects')) for (const p of items) {
                        const value = p.name === 'IfcPropertySingleValue' ? of(p, 'NominalValue') : p.args[3].value;
                        (sheets[r.value] = sheets[r.value] || {})[of(set, 'Name') + '.' + of(p, 'Name')] = String(value);
                    }
                });
                const bodies = {};
                api.StreamAllMeshes(model, mesh => {
                    const body = { volume: 0, box: [1e9, 1e9, 1e9, -1e9, -1e9, -1e9] };
                    for (let k = 0; k < mesh.geometries.size(); k++) {
                        const placed = mesh.geometries.get(k), geometry = api.GetGeometry(model, placed.geometryExpressID), t = placed.flatTransformation;
                        const v = api.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize()), index = api.GetIndexArray(geometry.GetIndexData(), geometry.GetIndexDataSize());
                        // The reader turns the model to y up: x, z, -y. Turned back here.
                        const at = i => { const x = v[6 * i], y = v[6 * i + 1], z = v[6 * i + 2]; return [t[0] * x + t[4] * y + t[8] * z + t[12], -(t[2] * x + t[6] * y + t[10] * z + t[14]), t[1] * x + t[5] * y + t[9] * z + t[13]]; };
                        for (let i = 0; i < index.length; i += 3) {
                            const a = at(index[i]), b = at(index[i + 1]), c = at(index[i + 2]);
                            body.volume += (a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])) / 6;
                            for (const p of [a, b, c]) for (let j = 0; j < 3; j++) { body.box[j] = Math.min(body.box[j], p[j]); body.box[j + 3] = Math.max(body.box[j + 3], p[j]); }
                        }
                        geometry.delete();
                    }
                    bodies[mesh.expressID] = body;
                });
                const elements = all('IfcElement').filter(([, l]) => l.name !== 'IfcOpeningElement').map(([id, l]) => ({
                    kind: l.name, name: of(l, 'Name'), tag: of(l, 'Tag'), contained: contained[id] || 0, typed: typed[id] || 0, made: made[id] || 0,
                    volume: bodies[id] ? bodies[id].volume : 0, box: bodies[id] ? bodies[id].box : [], sheets: sheets[id] || {} }));
                const fills = all('IfcRelFillsElement').map(([, l]) => [of(lines.get(of(l, 'RelatingOpeningElement')), 'Name'), of(lines.get(of(l, 'RelatedBuildingElement')), 'Name')]);
                const named = r => of(lines.get(r.value !== undefined ? r.value : r), 'Name');
                const connects = all('IfcRelConnectsElements').map(([, l]) => ({ kind: l.name, one: named(of(l, 'RelatingElement')), two: named(of(l, 'RelatedElement')),
                    by: l.name === 'IfcRelConnectsWithRealizingElements' ? of(l, 'RealizingElements').map(named) : [] }));
                const wholes = {}; all('IfcRelAggregates').forEach(([, l]) => { if (lines.get(of(l, 'RelatingObject')).name === 'IfcElementAssembly') wholes[named(of(l, 'RelatingObject'))] = of(l, 'RelatedObjects').map(named); });
                const axes = {}; all('IfcMember').forEach(([, l]) => {
                    const shape = lines.get(of(lines.get(of(l, 'Representation')), 'Representations')[0].value);
                    if (of(shape, 'RepresentationIdentifier') === 'Axis') axes[of(l, 'Name')] = of(lines.get(of(shape, 'Items')[0].value), 'Points').map(p => of(lines.get(p.value), 'Coordinates').map(x => Number(x.value)));
                });
                const voids = all('IfcRelVoidsElement').map(([, l]) => of(lines.get(of(l, 'RelatedOpeningElement')), 'Name'));
                const project = all('IfcProject')[0][1], site = all('IfcSite')[0][1], context = all('IfcGeometricRepresentationContext').find(([, l]) => l.name === 'IfcGeometricRepresentationContext')[1];
                answers.push({ path, schema: api.GetModelSchema(model), counts, faults: faults.slice(0, 20), guids, elements, fills, voids, connects, wholes, axes, projectName: of(project, 'Name'), buildings: all('IfcBuilding').map(([, l]) => of(l, 'Name')),
                    latitude: of(site, 'RefLatitude').map(x => x.value), longitude: of(site, 'RefLongitude').map(x => x.value), elevation: Number(of(site, 'RefElevation')),
                    north: of(lines.get(of(context, 'TrueNorth')), 'DirectionRatios').map(x => Number(x.value)) });
                api.CloseModel(model);
            }
            log(JSON.stringify({ said: said.filter(s => /error/i.test(s)), answers }));
        })();
        """;

    /// <summary>What the reader says of each file; null where it or Node is not there.</summary>
    public static JsonDocument? Read(params ReadOnlySpan<byte[]> files)
    {
        string? home = NodeRun.Library("web-ifc", "web-ifc-api-node.js");
        return home is null ? null : NodeRun.Try(Script, home, ".ifc", files);
    }
}

/// <summary>Runs a script of a reference library over files by Node.</summary>
internal static class NodeRun
{
    /// <summary>The script's answer; null where there is no Node.</summary>
    public static JsonDocument? Try(string script, string home, string ending, ReadOnlySpan<byte[]> files)
    {
        string folder = Directory.CreateTempSubdirectory("glazewright-model-").FullName;
        try
        {
            List<string> paths = [];
            foreach (byte[] file in files)
            {
                paths.Add(Path.Combine(folder, paths.Count.ToString(System.Globalization.CultureInfo.InvariantCulture) + ending));
                File.WriteAllBytes(paths[^1], file);
            }

            Process? run = null;
            try
            {
                run = Process.Start(new ProcessStartInfo("node", ["-e", script, home, .. paths]) { RedirectStandardOutput = true, RedirectStandardError = true });
            }
            catch (System.ComponentModel.Win32Exception)
            {
                return null;
            }

            using (run)
            {
                Task<string> wrong = run!.StandardError.ReadToEndAsync();
                string said = run.StandardOutput.ReadToEnd();
                run.WaitForExit();
                Assert.True(run.ExitCode == 0, wrong.GetAwaiter().GetResult());
                return JsonDocument.Parse(said);
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Folder of a fetched library; null when it is not there.</summary>
    public static string? Library(string name, string file)
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string home = Path.Combine(folder.FullName, "artifacts", "references", name, "package");
            if (File.Exists(Path.Combine(home, file)))
            {
                return home;
            }
        }

        return null;
    }
}
