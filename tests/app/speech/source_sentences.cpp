#include "source_sentences.h"

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

namespace kempt::sources {
namespace {

enum class Kind { word, literal, sign };
struct Token {
    Kind kind = Kind::sign;
    QString text;
    int line = 0;
};

QString unescaped(const QString& body) {
    QString out;
    for (qsizetype i = 0; i < body.size(); ++i) {
        if (body[i] != u'\\' || i + 1 >= body.size()) {
            out += body[i];
            continue;
        }
        const QChar next = body[++i];
        if (next == u'n') {
            out += u'\n';
        } else if (next == u't') {
            out += u'\t';
        } else if (next == u'u' && i + 4 < body.size()) {
            out += QChar(body.mid(i + 1, 4).toUShort(nullptr, 16));
            i += 4;
        } else {
            out += next;
        }
    }
    return out;
}

QVector<Token> tokens_of(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return {};
    const QString text = QString::fromUtf8(file.readAll());
    static const QRegularExpression piece(
        QStringLiteral("(?<comment>//[^\\n]*|/\\*.*?\\*/"
                       "|^\\s*#[^\\n]*)|(?<raw>R\"\\((.*?)\\)\")|\"(?<string>(?:[^\"\\\\\\n]|\\\\.)*)\"|"
                       "(?<char>'(?:[^'\\\\\\n]|\\\\.)+')|(?<word>[A-Za-z_][A-Za-z_0-9]*(?:::[A-Za-z_][A-Za-z_0-9]*)*|["
                       "0-9][0-9a-fA-F.'x]*)"
                       "|(?<sign><<|==|!=|->|[^\\s])"),
        QRegularExpression::MultilineOption | QRegularExpression::DotMatchesEverythingOption);
    QVector<Token> tokens;
    auto found = piece.globalMatch(text);
    int line = 1;
    qsizetype counted = 0;
    while (found.hasNext()) {
        const auto one = found.next();
        line += static_cast<int>(QStringView(text).mid(counted, one.capturedStart() - counted).count(u'\n'));
        counted = one.capturedStart();
        if (one.capturedStart(QStringLiteral("comment")) >= 0) continue;
        if (one.capturedStart(QStringLiteral("string")) >= 0) {
            const QString body = unescaped(one.captured(QStringLiteral("string")));
            if (!tokens.isEmpty() && tokens.back().kind == Kind::literal)
                tokens.back().text += body;
            else
                tokens.append({Kind::literal, body, line});
        } else if (one.capturedStart(QStringLiteral("word")) >= 0) {
            tokens.append({Kind::word, one.captured(), line});
        } else {
            tokens.append({Kind::sign, one.captured(), line});
        }
    }
    return tokens;
}

bool opens(const Token& t) {
    return t.kind == Kind::sign && (t.text == u"(" || t.text == u"{" || t.text == u"[");
}
bool closes(const Token& t) {
    return t.kind == Kind::sign && (t.text == u")" || t.text == u"}" || t.text == u"]");
}
bool parts(const Token& t) {
    static const QStringList between{",", "?", ":", ";", "=", "<<", "==", "!="};
    return (t.kind == Kind::sign && between.contains(t.text)) || (t.kind == Kind::word && t.text == u"return");
}

// A literal, or one inside of a call that only makes a string of it.
bool wraps(const QString& callee) {
    static const QStringList makers{"std::string", "QStringLiteral", "QString::fromUtf8", "QLatin1String",
                                    "q",           "QString"};
    return makers.contains(callee);
}

// From `at`, the tokens of one nesting level up to its end; nested levels are read for themselves.
void read_level(const QVector<Token>& tokens, qsizetype& at, const QString& file, QVector<Sentence>& out) {
    QString text;
    bool any = false, operand = false, open_operand = false;
    int place = 0, line = 0;
    const auto end_expression = [&] {
        if (any) out.append({file, line, text});
        text.clear();
        any = operand = open_operand = false;
        place = 0;
    };
    const auto add_literal = [&](const Token& literal) {
        if (!any) line = literal.line;
        any = operand = true;
        // "%.1f mm" of snprintf: a placeholder like any other.
        static const QRegularExpression printed(QStringLiteral("%(?:\\.[0-9])?[dfgs]"));
        QString words;
        qsizetype from = 0;
        for (auto found = printed.globalMatch(literal.text); found.hasNext();) {
            const auto one = found.next();
            words += literal.text.mid(from, one.capturedStart() - from) + u'%' + QString::number(++place);
            from = one.capturedEnd();
        }
        words += literal.text.mid(from);
        text += words;
    };
    while (at < tokens.size()) {
        const Token& t = tokens[at];
        if (closes(t)) {
            ++at;
            return end_expression();
        }
        if (opens(t)) {
            const bool maker = t.text == u"(" && at > 0 && tokens[at - 1].kind == Kind::word &&
                               wraps(tokens[at - 1].text) && at + 2 < tokens.size() &&
                               tokens[at + 1].kind == Kind::literal && closes(tokens[at + 2]);
            if (maker) {
                if (open_operand) {  // what the word before had opened is this literal
                    text.chop(2);
                    --place;
                    open_operand = false;
                }
                add_literal(tokens[at + 1]);
                at += 3;
                continue;
            }
            const bool block = t.text == u"{";
            ++at;
            read_level(tokens, at, file, out);
            if (block) {
                // "Error{...}" is a value, a function's body is none: after either nothing is joined.
                if (at >= tokens.size() || tokens[at].text != u"+") end_expression();
            }
            continue;
        }
        if (parts(t)) {
            end_expression();
        } else if (t.kind == Kind::literal) {
            add_literal(t);
        } else if (t.text == u"+") {
            operand = open_operand = false;
        } else if (t.kind == Kind::word && at > 0 && tokens[at - 1].kind == Kind::literal && at + 1 < tokens.size() &&
                   tokens[at + 1].kind == Kind::literal) {
            text += u'%' + QString::number(++place);  // a macro that stands for a literal
        } else if (!operand && !open_operand) {
            text += u'%' + QString::number(++place);
            open_operand = true;
        }
        ++at;
    }
    end_expression();
}

}  // namespace

QVector<Sentence> strings_of(const QString& path) {
    const QVector<Token> tokens = tokens_of(path);
    QVector<Sentence> out;
    for (qsizetype at = 0; at < tokens.size();) read_level(tokens, at, path, out);
    return out;
}

QVector<Sentence> sentences_of(const QString& path) {
    static const QRegularExpression shape(QStringLiteral("^(?:[A-Z%].*)[.?!]$"),
                                          QRegularExpression::DotMatchesEverythingOption);
    static const QRegularExpression two_words(QStringLiteral("[a-z]{2,}.* .*[a-z]{2,}"));
    QVector<Sentence> out;
    for (const Sentence& one : strings_of(path)) {
        const QString words = one.words.trimmed();
        static const QRegularExpression sql(QStringLiteral("^(?:SELECT|UPDATE|DELETE|INSERT|FROM) "));
        if (sql.match(words).hasMatch()) continue;
        if (shape.match(words).hasMatch() && two_words.match(words).hasMatch()) out.append({one.file, one.line, words});
    }
    return out;
}

QVector<Sentence> said_in(const QString& path) {
    const QVector<Token> tokens = tokens_of(path);
    QVector<Sentence> out;
    for (qsizetype i = 0; i + 3 < tokens.size(); ++i)
        if (tokens[i].kind == Kind::word && (tokens[i].text == u"say" || tokens[i].text == u"speech") &&
            tokens[i + 1].text == u"(" && tokens[i + 2].kind == Kind::literal)
            out.append({path, tokens[i + 2].line, tokens[i + 2].text});
    return out;
}

QStringList files_below(const QString& folder) {
    QStringList files;
    QDirIterator all(folder, {"*.cpp", "*.h"}, QDir::Files, QDirIterator::Subdirectories);
    while (all.hasNext()) files.append(all.next());
    files.sort();
    return files;
}

}  // namespace kempt::sources
