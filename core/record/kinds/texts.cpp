// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/texts.h"

#include "record/json/object_reader.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"
#include "record/kinds/confirmed_text.h"

namespace crownring {

TextAdopted Kind<TextAdopted>::read(ObjectReader& reader) {
    return {reader.name<TextId>("text"), reader.saying("revision"),       reader.optionalText("title"),
            reader.saying("body"),       reader.optionalText("source"), reader.saying("organisation")};
}

void Kind<TextAdopted>::write(nlohmann::json& into, const TextAdopted& body) {
    into["text"] = body.text.text();
    into["revision"] = body.revision;
    writeText(into, "title", body.title);
    into["body"] = body.body;
    writeText(into, "source", body.source);
    into["organisation"] = body.organisation;
}

TextConfirmed Kind<TextConfirmed>::read(ObjectReader& reader) {
    TextConfirmed body;
    readWhich(reader, body.text, body.checklist);
    body.revision = reader.saying("revision");
    body.digest = reader.text("digest");
    checkDigest(reader, "digest", body.digest);
    body.against = reader.saying("against");
    body.confirmedBy = reader.name<PersonId>("confirmed_by");
    body.capacity = reader.slug("capacity");
    body.licence = reader.optionalText("licence");
    return body;
}

void Kind<TextConfirmed>::write(nlohmann::json& into, const TextConfirmed& body) {
    writeName(into, "text", body.text);
    writeName(into, "checklist", body.checklist);
    into["revision"] = body.revision;
    into["digest"] = body.digest;
    into["against"] = body.against;
    into["confirmed_by"] = body.confirmedBy.text();
    into["capacity"] = body.capacity;
    writeText(into, "licence", body.licence);
}

}
