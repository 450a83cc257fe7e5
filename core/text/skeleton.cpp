// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/skeleton.h"

#include "text/utf8.h"

#include <array>
#include <unordered_map>

namespace crownring {

namespace {

struct Alike {
    std::string_view as;
    std::u32string_view letters;
};

/// Letters with an accent stand with those without.
const std::unordered_map<char32_t, std::string_view>& lookalikes() {
    static constexpr std::array alike = std::to_array<Alike>({
        {"3", U"\u0417\u0437\u04DE\u04DF"},
        {"a", U"\u00C0\u00C1\u00C2\u00C3\u00C4\u00C5\u00E0\u00E1\u00E2\u00E3\u00E4\u00E5\u0100\u0101\u0102"
              U"\u0103\u0104\u0105\u01CD\u01CE\u01DE\u01DF\u01E0\u01E1\u01FA\u01FB\u0200\u0201\u0202\u0203"
              U"\u0226\u0227\u0251\u0386\u0391\u03AC\u03B1\u0410\u0430\u04D0\u04D1\u04D2\u04D3\u1D00\u1E00"
              U"\u1E01\u1EA0\u1EA1\u1EA2\u1EA3\u1EA4\u1EA5\u1EA6\u1EA7\u1EA8\u1EA9\u1EAA\u1EAB\u1EAC\u1EAD"
              U"\u1EAE\u1EAF\u1EB0\u1EB1\u1EB2\u1EB3\u1EB4\u1EB5\u1EB6\u1EB7\u1F00\u1F01\u1F02\u1F03\u1F04"
              U"\u1F05\u1F06\u1F07\u1F08\u1F09\u1F0A\u1F0B\u1F0C\u1F0D\u1F0E\u1F0F\u1F70\u1F71\u1F80\u1F81"
              U"\u1F82\u1F83\u1F84\u1F85\u1F86\u1F87\u1F88\u1F89\u1F8A\u1F8B\u1F8C\u1F8D\u1F8E\u1F8F\u1FB0"
              U"\u1FB1\u1FB2\u1FB3\u1FB4\u1FB6\u1FB7\u1FB8\u1FB9\u1FBA\u1FBB\u1FBC"},
        {"ae", U"\u00C6\u00E6\u01E2\u01E3\u01FC\u01FD"},
        {"b", U"\u0299\u0392\u03B2\u0412\u042C\u0432\u044C\u1E02\u1E03\u1E04\u1E05\u1E06\u1E07"},
        {"c", U"\u00C7\u00E7\u0106\u0107\u0108\u0109\u010A\u010B\u010C\u010D\u03F2\u03F9\u0421\u0441\u1D04"
              U"\u1E08\u1E09\u216D\u217D"},
        {"d", U"\u00D0\u00F0\u010E\u010F\u0110\u0111\u0500\u0501\u1D05\u1E0A\u1E0B\u1E0C\u1E0D\u1E0E\u1E0F"
              U"\u1E10\u1E11\u1E12\u1E13\u216E\u217E"},
        {"e", U"\u00C8\u00C9\u00CA\u00CB\u00E8\u00E9\u00EA\u00EB\u0112\u0113\u0114\u0115\u0116\u0117\u0118"
              U"\u0119\u011A\u011B\u0204\u0205\u0206\u0207\u0228\u0229\u0388\u0395\u03AD\u03B5\u0400\u0401"
              U"\u0415\u0435\u0450\u0451\u04D6\u04D7\u1D07\u1E14\u1E15\u1E16\u1E17\u1E18\u1E19\u1E1A\u1E1B"
              U"\u1E1C\u1E1D\u1EB8\u1EB9\u1EBA\u1EBB\u1EBC\u1EBD\u1EBE\u1EBF\u1EC0\u1EC1\u1EC2\u1EC3\u1EC4"
              U"\u1EC5\u1EC6\u1EC7\u1F10\u1F11\u1F12\u1F13\u1F14\u1F15\u1F18\u1F19\u1F1A\u1F1B\u1F1C\u1F1D"
              U"\u1F72\u1F73\u1FC8\u1FC9\u212F"},
        {"f", U"\u017F\u0192\u1E1E\u1E1F\u1E9B"},
        {"g", U"\u011C\u011D\u011E\u011F\u0120\u0121\u0122\u0123\u01E6\u01E7\u01F4\u01F5\u0261\u0262\u0581"
              U"\u1E20\u1E21\u210A"},
        {"h", U"\u0124\u0125\u0126\u0127\u021E\u021F\u029C\u0389\u0397\u041D\u043D\u04BA\u04BB\u0570\u1E22"
              U"\u1E23\u1E24\u1E25\u1E26\u1E27\u1E28\u1E29\u1E2A\u1E2B\u1E96\u1F28\u1F29\u1F2A\u1F2B\u1F2C"
              U"\u1F2D\u1F2E\u1F2F\u1F98\u1F99\u1F9A\u1F9B\u1F9C\u1F9D\u1F9E\u1F9F\u1FCA\u1FCB\u1FCC\u210E"},
        {"j", U"\u0134\u0135\u01F0\u037F\u03F3\u0408\u0458\u1D0A"},
        {"k", U"\u004B\u0136\u0137\u0138\u01E8\u01E9\u039A\u03BA\u040C\u041A\u043A\u045C\u1D0B\u1E30\u1E31"
              U"\u1E32\u1E33\u1E34\u1E35"},
        {"l", U"\u00CC\u00CD\u00CE\u00CF\u00EC\u00ED\u00EE\u00EF\u0128\u0129\u012A\u012B\u012C\u012D\u012E"
              U"\u012F\u0130\u0131\u0139\u013A\u013B\u013C\u013D\u013E\u0141\u0142\u01C0\u01CF\u01D0\u0208"
              U"\u0209\u020A\u020B\u0269\u026A\u029F\u038A\u0390\u0399\u03AA\u03AF\u03B9\u03CA\u0406\u0407"
              U"\u0456\u0457\u04C0\u04CF\u056C\u1E2C\u1E2D\u1E2E\u1E2F\u1E36\u1E37\u1E38\u1E39\u1E3A\u1E3B"
              U"\u1E3C\u1E3D\u1EC8\u1EC9\u1ECA\u1ECB\u1F30\u1F31\u1F32\u1F33\u1F34\u1F35\u1F36\u1F37\u1F38"
              U"\u1F39\u1F3A\u1F3B\u1F3C\u1F3D\u1F3E\u1F3F\u1F76\u1F77\u1FD0\u1FD1\u1FD2\u1FD3\u1FD6\u1FD7"
              U"\u1FD8\u1FD9\u1FDA\u1FDB\u2113\u2160\u216C\u2170\u217C"},
        {"n", U"\u00D1\u00F1\u0143\u0144\u0145\u0146\u0147\u0148\u014A\u014B\u01F8\u01F9\u0274\u039D\u03AE"
              U"\u03B7\u040D\u0418\u0419\u041F\u0438\u0439\u043F\u045D\u04E2\u04E3\u04E4\u04E5\u0578\u1E44"
              U"\u1E45\u1E46\u1E47\u1E48\u1E49\u1E4A\u1E4B\u1F20\u1F21\u1F22\u1F23\u1F24\u1F25\u1F26\u1F27"
              U"\u1F74\u1F75\u1F90\u1F91\u1F92\u1F93\u1F94\u1F95\u1F96\u1F97\u1FC2\u1FC3\u1FC4\u1FC6\u1FC7"},
        {"o", U"\u00D2\u00D3\u00D4\u00D5\u00D6\u00D8\u00F2\u00F3\u00F4\u00F5\u00F6\u00F8\u014C\u014D\u014E"
              U"\u014F\u0150\u0151\u01A0\u01A1\u01D1\u01D2\u01EA\u01EB\u01EC\u01ED\u01FE\u01FF\u020C\u020D"
              U"\u020E\u020F\u022A\u022B\u022C\u022D\u022E\u022F\u0230\u0231\u038C\u039F\u03BF\u03C3\u03CC"
              U"\u041E\u043E\u04E6\u04E7\u0555\u0585\u1D0F\u1E4C\u1E4D\u1E4E\u1E4F\u1E50\u1E51\u1E52\u1E53"
              U"\u1ECC\u1ECD\u1ECE\u1ECF\u1ED0\u1ED1\u1ED2\u1ED3\u1ED4\u1ED5\u1ED6\u1ED7\u1ED8\u1ED9\u1EDA"
              U"\u1EDB\u1EDC\u1EDD\u1EDE\u1EDF\u1EE0\u1EE1\u1EE2\u1EE3\u1F40\u1F41\u1F42\u1F43\u1F44\u1F45"
              U"\u1F48\u1F49\u1F4A\u1F4B\u1F4C\u1F4D\u1F78\u1F79\u1FF8\u1FF9\u2134"},
        {"oe", U"\u0152\u0153"},
        {"p", U"\u03A1\u03C1\u0420\u0440\u0584\u1D18\u1E54\u1E55\u1E56\u1E57\u1FE4\u1FE5\u1FEC"},
        {"q", U"\u051A\u051B\u0566"},
        {"r", U"\u0154\u0155\u0156\u0157\u0158\u0159\u0210\u0211\u0212\u0213\u0280\u0403\u0413\u0433\u0453"
              U"\u0490\u0491\u1E58\u1E59\u1E5A\u1E5B\u1E5C\u1E5D\u1E5E\u1E5F"},
        {"rn", U"\u039C\u041C\u043C\u1D0D\u1E3E\u1E3F\u1E40\u1E41\u1E42\u1E43\u216F\u217F"},
        {"s", U"\u015A\u015B\u015C\u015D\u015E\u015F\u0160\u0161\u0218\u0219\u0405\u0455\u1E60\u1E61\u1E62"
              U"\u1E63\u1E64\u1E65\u1E66\u1E67\u1E68\u1E69\uA731"},
        {"ss", U"\u00DF"},
        {"t", U"\u0162\u0163\u0164\u0165\u0166\u0167\u021A\u021B\u03A4\u03C4\u0422\u0442\u1D1B\u1E6A\u1E6B"
              U"\u1E6C\u1E6D\u1E6E\u1E6F\u1E70\u1E71\u1E97"},
        {"u", U"\u00D9\u00DA\u00DB\u00DC\u00F9\u00FA\u00FB\u00FC\u0168\u0169\u016A\u016B\u016C\u016D\u016E"
              U"\u016F\u0170\u0171\u0172\u0173\u01AF\u01B0\u01D3\u01D4\u01D5\u01D6\u01D7\u01D8\u01D9\u01DA"
              U"\u01DB\u01DC\u0214\u0215\u0216\u0217\u03B0\u03C5\u03CB\u03CD\u054D\u057D\u1D1C\u1E72\u1E73"
              U"\u1E74\u1E75\u1E76\u1E77\u1E78\u1E79\u1E7A\u1E7B\u1EE4\u1EE5\u1EE6\u1EE7\u1EE8\u1EE9\u1EEA"
              U"\u1EEB\u1EEC\u1EED\u1EEE\u1EEF\u1EF0\u1EF1\u1F50\u1F51\u1F52\u1F53\u1F54\u1F55\u1F56\u1F57"
              U"\u1F7A\u1F7B\u1FE0\u1FE1\u1FE2\u1FE3\u1FE6\u1FE7"},
        {"v", U"\u03BD\u1D20\u1E7C\u1E7D\u1E7E\u1E7F\u2164\u2174"},
        {"vv", U"\u0174\u0175\u03C9\u03CE\u051C\u051D\u0561\u1D21\u1E80\u1E81\u1E82\u1E83\u1E84\u1E85\u1E86"
               U"\u1E87\u1E88\u1E89\u1E98\u1F60\u1F61\u1F62\u1F63\u1F64\u1F65\u1F66\u1F67\u1F7C\u1F7D\u1FA0"
               U"\u1FA1\u1FA2\u1FA3\u1FA4\u1FA5\u1FA6\u1FA7\u1FF2\u1FF3\u1FF4\u1FF6\u1FF7"},
        {"x", U"\u03A7\u03C7\u0425\u0445\u1E8A\u1E8B\u1E8C\u1E8D\u2169\u2179"},
        {"y", U"\u00DD\u00FD\u00FF\u0176\u0177\u0178\u0232\u0233\u028F\u038E\u03A5\u03AB\u03B3\u040E\u0423"
              U"\u0443\u045E\u04EE\u04EF\u04F0\u04F1\u04F2\u04F3\u1E8E\u1E8F\u1E99\u1EF2\u1EF3\u1EF4\u1EF5"
              U"\u1EF6\u1EF7\u1EF8\u1EF9\u1F59\u1F5B\u1F5D\u1F5F\u1FE8\u1FE9\u1FEA\u1FEB"},
        {"z", U"\u0179\u017A\u017B\u017C\u017D\u017E\u0396\u1D22\u1E90\u1E91\u1E92\u1E93\u1E94\u1E95"},
    });
    static const auto table = [] {
        std::unordered_map<char32_t, std::string_view> map;
        for (const auto& [as, letters] : alike)
            for (const char32_t letter : letters)
                map.emplace(letter, as);
        return map;
    }();
    return table;
}

/// Whatever the accents, and what is read as a letter as that letter.
void addPlain(std::string& to, char32_t letter) {
    if (letter >= 'A' && letter <= 'Z')
        letter += 'a' - 'A';
    if (letter == 'i' || letter == '1' || letter == '|')
        to += 'l';
    else if (letter == '0')
        to += 'o';
    else if (letter == 'm')
        to += "rn";
    else if (letter == 'w')
        to += "vv";
    else if ((letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9'))
        to += static_cast<char>(letter);
}

bool isWithin(char32_t point, char32_t first, char32_t last) { return first <= point && point <= last; }

/// Accents that are written behind their letter, spaces, what takes no room and what turns the direction.
bool isPassedOver(char32_t point) {
    return isWithin(point, 0x80, 0xA9) || isWithin(point, 0xAB, 0xB1) || isWithin(point, 0xB4, 0xB8) ||
           isWithin(point, 0x02B0, 0x036F) || isWithin(point, 0x0483, 0x0489) || isWithin(point, 0x115F, 0x1160) ||
           isWithin(point, 0x17B4, 0x17B5) || isWithin(point, 0x180B, 0x180F) || isWithin(point, 0x1AB0, 0x1AFF) ||
           isWithin(point, 0x1DC0, 0x1DFF) || isWithin(point, 0x2000, 0x206F) || isWithin(point, 0x20D0, 0x20FF) ||
           isWithin(point, 0xFE00, 0xFE2F) || isWithin(point, 0xE0000, 0xE0FFF) || point == 0x061C || point == 0x1680 ||
           point == 0x3000 || point == 0x3164 || point == 0xFEFF || point == 0xFFA0;
}

/// The plain letter of which it is another form; itself where it is none.
char32_t plainForm(char32_t point) {
    if (isWithin(point, 0xFF01, 0xFF5E)) // full width
        return point - 0xFF01 + 0x21;
    if (isWithin(point, 0x1D400, 0x1D6A3)) { // mathematical: alphabets of 26 capitals and 26 small
        const auto letter = (point - 0x1D400) % 52;
        return letter < 26 ? 'A' + letter : 'a' + letter - 26;
    }
    if (isWithin(point, 0x1D7CE, 0x1D7FF))
        return '0' + (point - 0x1D7CE) % 10;
    if (isWithin(point, 0x24B6, 0x24CF)) // in circles
        return 'A' + (point - 0x24B6);
    if (isWithin(point, 0x24D0, 0x24E9))
        return 'a' + (point - 0x24D0);
    return point;
}

}

std::string skeleton(std::string_view name) {
    std::string folded;
    for (auto rest = name; !rest.empty();) {
        const auto length = sequenceLength(rest);
        if (length == 0) { // no UTF-8: the byte stands for itself
            folded += rest.front();
            rest.remove_prefix(1);
            continue;
        }
        const auto sequence = rest.substr(0, length);
        const auto point = plainForm(pointOf(sequence));
        rest.remove_prefix(length);
        if (point < 0x80)
            addPlain(folded, point);
        else if (const auto known = lookalikes().find(point); known != lookalikes().end())
            folded += known->second;
        else if (!isPassedOver(point))
            folded += sequence;
    }
    return folded.empty() ? std::string(name) : folded;
}

}
